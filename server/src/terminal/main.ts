import { Command, CommanderError, Option } from 'commander'
import { version } from '../../../package.json'
import { languages, type Bundle, type Language } from '../wording/bundle.ts'
import { commands } from './commands/index.ts'
import { CouldNotRun } from './could-not-run.ts'
import { complaint } from './help/complaint.ts'
import { sayHelp } from './help/say-help.ts'
import { phraseInWords, sayIn } from '../wording/phrase.ts'
import { noEscapes, printable, visible } from './visible.ts'
import type { World } from './world.ts'

/**
 * The command line, pure of the process.
 *
 * @returns  exit code: 0 clean, 1 findings at or above the threshold, 2 could not run
 */
export async function main(outside: World): Promise<number> {
  const bundle = outside.words(languageAsked(outside.args))
  const say = sayIn(bundle)
  const world: World = {
    ...outside,
    bundle,
    out: (text) => outside.out(printable(text, outside)),
    err: (text) => outside.err(printable(text, noEscapes)),
  }
  let code = 0
  const program = new Command('wattproof')
    .description(say`Proofreads hand-typed solar panel records and off-grid system descriptions.`)
    .version(version, '-V, --version', say`print the version`)
    .addOption(inLanguage(bundle))
    .enablePositionalOptions()
    .exitOverride()
    .configureOutput({
      writeOut: world.out,
      writeErr: world.err,
      outputError: (text, write) => write(`wattproof: ${complaint(text, bundle)}`),
    })
    .addHelpText('after', `\n${say`Exit code: 0 clean, 1 findings at or above --fail-on, 2 could not run.`}`)
  for (const add of commands) add(program, world, (result) => (code = result))
  for (const command of program.commands.filter((one) => one.name() !== 'serve')) command.addOption(inLanguage(bundle))
  sayHelp(program, bundle)
  try {
    await program.parseAsync(world.args, { from: 'user' })
    return code
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2
    world.err(
      error instanceof CouldNotRun
        ? `wattproof: ${visible(phraseInWords(error.said, bundle))}\n`
        : `${say`wattproof stumbled: ${inFull(error)}`}\n`,
    )
    return 2
  }
}

/** Only where it is asked for: the same command prints the same on every machine. */
const inLanguage = (bundle: Bundle | undefined) =>
  new Option('--language <language>', sayIn(bundle)`of what is printed for people`).choices(languages).default('en')

/** Help and complaints are in that language too, so it is looked for before the options are parsed. */
function languageAsked(args: readonly string[]): Language {
  const own = args.includes('--') ? args.slice(0, args.indexOf('--')) : args
  const typed = own.flatMap((arg, i) => {
    if (arg.startsWith('--language=')) return arg.slice('--language='.length)
    return i > 0 && own[i - 1] === '--language' ? arg : []
  })
  return languages.find((one) => one === typed.at(-1)) ?? 'en'
}

const inFull = (error: unknown) => (error instanceof Error ? (error.stack ?? error.message) : String(error))
