import { CouldNotRun } from '../could-not-run.ts'
import type { AddCommand } from './command.ts'

export const addServe: AddCommand = (program, world) => {
  program
    .command('serve')
    .description('the language server, for any editor')
    .option('--stdio', 'talk over standard input and output')
    .addHelpText('after', '\nExample, as an editor starts it:\n  wattproof serve --stdio')
    .action(({ stdio }: { stdio?: true }) => {
      if (!stdio) throw new CouldNotRun('serve is started by an editor, with --stdio.')
      return world.serve()
    })
}
