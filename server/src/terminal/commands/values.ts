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
import { foldWords } from '../tables/fitted-table.ts'
import { table } from '../tables/table.ts'
import type { AddCommand } from './command.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { named, phrase, sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'

interface Options {
  readonly format: 'text' | 'json' | 'markdown'
  readonly since?: string
}

export const addValues: AddCommand = (program, world) => {
  const say = sayIn(world.bundle)
  program
    .command('values')
    .description(say`the derived values of a record, with formula and inputs; with --since, what a change does to them`)
    .argument(
      '[file]',
      say`a panel record or a system description; with --since a folder too, or nothing for all that changed`,
    )
    .addOption(
      new Option('--format <format>', say`how to print; Markdown with --since`)
        .choices(['text', 'json', 'markdown'])
        .default('text'),
    )
    .option('--since <revision>', say`the values that differ from those at a git revision, of all records that changed`)
    .addHelpText(
      'after',
      examples(
        world.bundle,
        'values tern-110.panel.yaml',
        'values tern-110.panel.yaml --format json',
        'values --since origin/main --format markdown',
      ),
    )
    .action(async (path: string | undefined, { format, since }: Options) => {
      if (since !== undefined) return printChanges(world, path === undefined ? [] : [path], since, format)
      if (path === undefined) throw new CouldNotRun(phrase`name a record, or what to compare with: --since REV`)
      if (format === 'markdown') throw new CouldNotRun(phrase`Markdown is for --since, which makes a table of changes`)
      const full = absolute(world.cwd, path)
      if ((await world.standing(full)) === 'folder')
        throw new CouldNotRun(phrase`\`${path}\` is a folder; name one record`)
      const { library } = await select(world, [path])
      const file = library.file(full)
      if (file?.unread) throw new CouldNotRun(phrase`\`${path}\` was not read: ${file.unread.because}`)
      const checked = checkFile(library, full, world)
      const mistake = checked?.findings.find(({ rule }) => rule === reading.internal.id)
      if (checked && mistake) {
        reportMistakes(world, path, [mistake])
        throw new CouldNotRun(named(mistake.message))
      }
      const values = checked?.values() ?? []
      if (format === 'json') world.out(toJson(values))
      else if (values.length) world.out(toText(values, world.hasWidth ? world.width : Infinity, world.bundle))
      else world.err(`wattproof: ${say`${path} has no derived values; panel records and systems do`}\n`)
    })
}

const indent = '    '

/** In SI units, `inputs` too. */
function toJson(values: readonly Value[]): string {
  const shown = values.map(({ id, label, value, unit, text, formula, inputs, missing, source, uncertainty }) => {
    return { id, label, value, unit, text, formula, inputs, missing, source, uncertainty }
  })
  return jsonText({ version: 1, values: shown })
}

/** A line for each value where the terminal has room for all of them, else formula and inputs below each. */
function toText(values: readonly Value[], width: number, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const name = (text: string) => translated(text, bundle)
  const rows = values.map(({ id, value, text, formula, inputs, missing }) =>
    value === null
      ? [id, say`not known`, name(formula), say`needs ${missing.map(name).join(', ')}`]
      : [id, text, name(formula), inputs.map((input) => `${name(input.name)} ${input.text}`).join(', ')],
  )
  const wide = table([[say`value`, say`result`, say`formula`, say`from`], ...rows])
  if (wide.split('\n').every((line) => [...line].length <= width)) return wide
  const heads = table(rows.map(([id = '', result = '']) => [id, result])).split('\n')
  const below = (text = '') => foldWords(text, width - indent.length).map((line) => `${indent}${line}\n`)
  return rows.map(([, , formula, from], i) => [`${heads[i]}\n`, ...below(formula), ...below(from)].join('')).join('')
}
