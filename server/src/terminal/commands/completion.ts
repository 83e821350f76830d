import { Argument } from 'commander'
import { allFacts } from '../../check/facts.ts'
import { scripts, type Shell } from '../completion/shells.ts'
import { wordsOf } from '../completion/words.ts'
import type { AddCommand } from './command.ts'
import { sayIn } from '../../wording/phrase.ts'

export const addCompletion: AddCommand = (program, world) => {
  const say = sayIn(world.bundle)
  program
    .command('completion')
    .description(say`a script with which a shell completes commands, options and what they take`)
    .addArgument(new Argument('<shell>', say`the shell`).choices(Object.keys(scripts)))
    .addHelpText(
      'after',
      `\n${say`Examples, for the file that the shell reads when it starts:`}\n  source <(wattproof completion bash)\n  source <(wattproof completion zsh)\n  wattproof completion fish | source`,
    )
    .action((shell: Shell) => {
      const ids = allFacts.flatMap(({ rules }) => rules.map(({ id }) => id))
      world.out(scripts[shell](wordsOf(program, ids)))
    })
}
