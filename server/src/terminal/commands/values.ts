import { Option } from 'commander'
import { checkFile } from '../../check/check.ts'
import { reading } from '../../records/facts.ts'
import type { Value } from '../../values/value.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { reportMistakes } from '../mistakes.ts'
import { absolute } from '../paths.ts'
import { select } from '../select.ts'
import { printChanges } from '../value-changes.ts'
import { jsonText } from '../visible.ts'
import { table } from '../tables/table.ts'
import type { AddCommand } from './command.ts'

interface Options {
  readonly format: 'text' | 'json' | 'markdown'
  readonly since?: string
}

export const addValues: AddCommand = (program, world) => {
  program
    .command('values')
    .description('the derived values of a record, with formula and inputs; with --since, what a change does to them')
    .argument(
      '[file]',
      'a panel record or a system description; with --since a folder too, or nothing for all that changed',
    )
    .addOption(
      new Option('--format <format>', 'how to print; Markdown with --since')
        .choices(['text', 'json', 'markdown'])
        .default('text'),
    )
    .option('--since <revision>', 'the values that differ from those at a git revision, of all records that changed')
    .addHelpText(
      'after',
      '\nExamples:\n  wattproof values tern-110.panel.yaml\n  wattproof values tern-110.panel.yaml --format json\n  wattproof values --since origin/main --format markdown',
    )
    .action(async (path: string | undefined, { format, since }: Options) => {
      if (since !== undefined) return printChanges(world, path === undefined ? [] : [path], since, format)
      if (path === undefined) throw new CouldNotRun('name a record, or what to compare with: --since REV')
      if (format === 'markdown') throw new CouldNotRun('Markdown is for --since, which makes a table of changes')
      const full = absolute(world.cwd, path)
      if ((await world.standing(full)) === 'folder') throw new CouldNotRun(`\`${path}\` is a folder; name one record`)
      const { library } = await select(world, [path])
      const file = library.file(full)
      if (file?.unread) throw new CouldNotRun(`\`${path}\` was not read: ${file.unread.because}`)
      const checked = checkFile(library, full, world)
      const mistake = checked?.findings.find(({ rule }) => rule === reading.internal.id)
      if (checked && mistake) {
        reportMistakes(world, path, [mistake])
        throw new CouldNotRun(mistake.message)
      }
      const values = checked?.values() ?? []
      if (format === 'json') world.out(toJson(values))
      else if (values.length) world.out(toText(values))
      else world.err(`wattproof: ${path} has no derived values; panel records and systems do\n`)
    })
}

/** In SI units, `inputs` too. */
function toJson(values: readonly Value[]): string {
  const shown = values.map(({ id, label, value, unit, text, formula, inputs, missing, source, uncertainty }) => {
    return { id, label, value, unit, text, formula, inputs, missing, source, uncertainty }
  })
  return jsonText({ version: 1, values: shown })
}

function toText(values: readonly Value[]): string {
  const rows = values.map(({ id, value, text, formula, inputs, missing }) =>
    value === null
      ? [id, 'not known', formula, `needs ${missing.join(', ')}`]
      : [id, text, formula, inputs.map((input) => `${input.name} ${input.text}`).join(', ')],
  )
  return table([['value', 'result', 'formula', 'from'], ...rows])
}
