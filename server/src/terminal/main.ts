import { Command, CommanderError, Option } from 'commander'
import { version } from '../../../package.json'
import { languages, type Bundle, type Language } from '../wording/bundle.ts'
import { commands } from './commands/index.ts'
import { CouldNotRun } from './could-not-run.ts'
import { noEscapes, printable, visible } from './visible.ts'
import type { World } from './world.ts'

/**
 * The command line, pure of the process.
 *
 * @returns  exit code: 0 clean, 1 findings at or above the threshold, 2 could not run
 */
export async function main(outside: World): Promise<number> {
  const world: World & { bundle?: Bundle | undefined } = {
    ...outside,
    out: (text) => outside.out(printable(text, outside)),
    err: (text) => outside.err(printable(text, noEscapes)),
  }
  let code = 0
  const program = new Command('wattproof')
    .description('Proofreads hand-typed solar panel records and off-grid system descriptions.')
    .version(version)
    .exitOverride()
    .configureOutput({
      writeOut: world.out,
      writeErr: world.err,
      outputError: (text, write) => write(text.replace(/^error: /, 'wattproof: ')),
    })
    .addHelpText('after', '\nExit code: 0 clean, 1 findings at or above --fail-on, 2 could not run.')
  for (const add of commands) add(program, world, (result) => (code = result))
  for (const command of program.commands.filter((one) => one.name() !== 'serve')) command.addOption(inLanguage())
  program.hook('preAction', (_, command) => {
    world.bundle = world.words(command.opts<{ language?: Language }>().language ?? 'en')
  })
  try {
    await program.parseAsync(world.args, { from: 'user' })
    return code
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2
    world.err(
      error instanceof CouldNotRun
        ? `wattproof: ${visible(error.message)}\n`
        : `wattproof stumbled: ${inFull(error)}\n`,
    )
    return 2
  }
}

/** Only where it is asked for: the same command prints the same on every machine. */
const inLanguage = () =>
  new Option('--language <language>', 'of what is printed for people').choices(languages).default('en')

const inFull = (error: unknown) => (error instanceof Error ? (error.stack ?? error.message) : String(error))
