import { CouldNotRun } from '../could-not-run.ts'
import type { AddCommand } from './command.ts'
import { phrase, sayIn } from '../../wording/phrase.ts'

export const addServe: AddCommand = (program, world) => {
  const say = sayIn(world.bundle)
  program
    .command('serve')
    .description(say`the language server, for any editor`)
    .option('--stdio', say`talk over standard input and output`)
    .addHelpText('after', `\n${say`Example, as an editor starts it:`}\n  wattproof serve --stdio`)
    .action(({ stdio }: { stdio?: true }) => {
      if (!stdio) throw new CouldNotRun(phrase`serve is started by an editor, with --stdio.`)
      return world.serve()
    })
}
