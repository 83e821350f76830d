import type { Argument, Command, Option } from 'commander'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inCatalogue, sayIn } from '../../wording/phrase.ts'

/** The library's own words in the help of a program and of its commands. */
export function sayHelp(program: Command, bundle: Bundle | undefined): void {
  const say = sayIn(bundle)
  const help = say`display help for command`
  program.helpCommand('help [command]', help)
  for (const command of [program, ...program.commands])
    command.helpOption('-h, --help', help).configureHelp({
      styleTitle: (title) => (titles.includes(title) ? translated(title, bundle) : title),
      optionDescription: (option) => withChoices(option, bundle),
      argumentDescription: (argument) => withChoices(argument, bundle),
    })
}

const titles = [inCatalogue`Usage:`, inCatalogue`Arguments:`, inCatalogue`Options:`, inCatalogue`Commands:`]

/** A description, with what can be chosen and what is taken where nothing is. */
function withChoices(
  { description, argChoices, defaultValue }: Pick<Option | Argument, 'description' | 'argChoices' | 'defaultValue'>,
  bundle: Bundle | undefined,
): string {
  const say = sayIn(bundle)
  const more = [
    ...(argChoices ? [say`choices: ${argChoices.map((choice) => JSON.stringify(choice)).join(', ')}`] : []),
    ...(typeof defaultValue === 'string' ? [say`default: ${JSON.stringify(defaultValue)}`] : []),
  ]
  return more.length > 0 ? `${description} (${more.join(', ')})` : description
}
