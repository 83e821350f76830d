import { Option } from 'commander'
import { cellsOf, pointerOf } from '../../rows/cells.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { expanded } from '../patterns.ts'
import { absolute, isWithin, shown } from '../paths.ts'
import { typedColumns, type TypedRow } from '../rows/table-columns.ts'
import { select } from '../select.ts'
import { chosen, filtered, sorted } from '../tables/column.ts'
import { toMarkdown } from '../../rows/write-columns.ts'
import { toCsv, toText } from '../tables/formats.ts'
import type { TableOptions } from '../tables/options.ts'
import { withTableOptions } from '../tables/with-options.ts'
import { jsonText } from '../visible.ts'
import type { World } from '../world.ts'
import type { AddCommand } from './command.ts'
import { phrase, sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'

interface Options extends TableOptions {
  readonly kind?: string
}

export const addTable: AddCommand = (program, world) => {
  const say = sayIn(world.bundle)
  withTableOptions(
    world,
    program
      .command('table')
      .description(say`what records type, a row for each and a column for each field; \`new\` reads the CSV back`)
      .argument('[path...]', say`records, folders of them and patterns; the current folder where none is named`),
  )
    .addOption(
      new Option('--kind <kind>', say`records of one kind only`).choices([
        'panel',
        'controller',
        'battery',
        'climate',
        'system',
      ]),
    )
    .addHelpText('after', () => `\n${help(world)}`)
    .action(async (paths: readonly string[], options: Options) => world.out(await typedTable(world, paths, options)))
}

async function typedTable(
  world: World,
  paths: readonly string[],
  { format, sort, filter, columns: names, kind }: Options,
): Promise<string> {
  const named = await expanded(world, paths)
  const places = (named.length > 0 ? named : ['.']).map((path) => absolute(world.cwd, path))
  const { library, targets } = await select(world, named)
  // what depends on a record is selected with it, and is not asked for here
  const asked = targets.filter((path) => places.some((place) => isWithin(place, path)))
  const files = asked.flatMap((path) => {
    const file = library.file(path)
    return file && file.kind !== 'library' && (kind === undefined || file.kind === kind) ? [file] : []
  })
  for (const { path, unread } of files)
    if (unread)
      world.err(`wattproof: ${sayIn(world.bundle)`${shown(world.cwd, path)} was not read: ${unread.because}`}\n`)
  const all = files
    .filter(({ unread }) => !unread)
    .map((file): TypedRow => ({ file, path: shown(world.cwd, file.path), cells: cellsOf(file.tree) }))
  if (all.length === 0) throw new CouldNotRun(phrase`there is no record to show`)
  const columns = typedColumns(all)
  const rows = sorted(filtered(all, columns.all, filter), columns.all, sort)
  const shownColumns = names === undefined ? columns.filled : chosen(columns.all, names)
  if (format === 'csv') return toCsv(rows, shownColumns, '')
  if (format === 'markdown') return toMarkdown(rows, shownColumns, world.bundle)
  if (format === 'text') return toText(rows, shownColumns, world)
  const pointers = new Set(shownColumns.map(({ key }) => pointerOf(key)))
  return jsonText({
    version: 1,
    rows: rows.map(({ file, path, cells }) => ({
      file: path,
      kind: file.kind,
      fields: Object.fromEntries([...cells].filter(([pointer]) => pointers.has(pointer))),
    })),
  })
}

function help({ bundle }: World): string {
  const say = sayIn(bundle)
  return `${say`Fields are named by their path: stc.voc, price.amount. A list is one cell, as YAML writes it on one line.`}
${say`--filter and --sort understand units: "weight < 5 lb". In CSV, a text that a spreadsheet would take for a formula has an apostrophe before it.`}
${examples(
  bundle,
  'table panels',
  'table panels --columns name,stc.pmax,stc.voc,price.amount --sort=-stc.pmax',
  'table panels --filter "stc.pmax >= 100 W" --filter "surface = ETFE" --format markdown',
  'table panels --format csv > panels.csv',
  'new panel --from panels.csv -o panels',
)}`
}
