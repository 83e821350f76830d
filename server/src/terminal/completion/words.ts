import type { Command } from 'commander'

/** What a shell can offer behind the name of the program. */
export interface Words {
  readonly name: string
  readonly description: string
  readonly options: readonly OptionWords[]
  /** What the first argument can be; none where it is a path or anything. */
  readonly choices: readonly string[]
}

export interface OptionWords {
  readonly flags: readonly string[]
  readonly description: string
  readonly takesValue: boolean
  /** What its value can be; none where it is a path or anything. */
  readonly choices: readonly string[]
}

/** The commands of a program, with their options; `ids` are what `explain` takes. */
export const wordsOf = (program: Command, ids: readonly string[]): readonly Words[] =>
  program.commands.map((command) => ({
    name: command.name(),
    description: oneLine(command.description()),
    options: command.options.map(({ short, long, description, required, optional, argChoices }) => ({
      flags: [long, short].filter((flag) => typeof flag === 'string'),
      description: oneLine(description),
      takesValue: required || optional,
      choices: argChoices ?? [],
    })),
    choices: command.name() === 'explain' ? ids : (command.registeredArguments[0]?.argChoices ?? []),
  }))

/** Shells part a name from its description by a colon, and quote with apostrophes. */
const oneLine = (text: string) => text.replace(/[`']/g, '').replaceAll(':', ',').split(/; |\n/)[0]!
