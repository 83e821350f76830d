import type { AddCommand } from './command.ts'

export const addServe: AddCommand = (program, world) => {
  program
    .command('serve')
    .description('the language server, for any editor')
    .requiredOption('--stdio', 'talk over standard input and output')
    .action(() => world.serve())
}
