import type { SurfaceRow } from '../../review/choosing/row.ts'
import { answerCell, type Column } from '../../rows/cell.ts'
import { toMarkdown } from '../../rows/write-columns.ts'
import { chosen, filtered, sorted } from '../tables/column.ts'
import { toCsv, toText } from '../tables/formats.ts'
import { below, besideCsv } from '../tables/notes.ts'
import type { TableOptions } from '../tables/options.ts'
import type { World } from '../world.ts'
import type { OnSurface } from './on-surface.ts'
import { shownColumns, surfaceColumns } from './surface-columns.ts'
import { surfaceJson } from './surface-json.ts'
import { surfaceNotes } from './surface-notes.ts'
import { translated } from '../../wording/bundle.ts'
import { inCatalogue, sayIn } from '../../wording/phrase.ts'

/** Panels on one surface as they are printed. */
export function surfaceReport(comparison: OnSurface, options: TableOptions, world: World): string {
  const { file, target, beside } = comparison
  const { width, bundle } = world
  const { format, columns: names } = options
  const rows = rowsShown(comparison, options)
  const taken = rows.filter(({ excluded }) => excluded === null)
  const out = rows.filter(({ excluded }) => excluded !== null)
  const name = (panel: string) => (panel === beside ? `${panel} *` : panel)
  const besideColumn: Column<SurfaceRow> = {
    key: 'beside',
    label: inCatalogue`set beside`,
    cell: ({ panel }) => answerCell(panel === beside, bundle),
  }
  if (format === 'json') return surfaceJson(comparison, rows)
  const columns = names === undefined && format === 'text' ? shownColumns : chosen(surfaceColumns, names)
  const notes = surfaceNotes(comparison, { rows, keys: columns.map(({ key }) => key) }, bundle)
  if (format === 'csv') {
    besideCsv(world, notes)
    return toCsv(rows, beside === null ? columns : [...columns, besideColumn])
  }
  const isShown = rows.some(({ panel }) => panel === beside)
  const mark =
    beside !== null && isShown ? [`* ${sayIn(bundle)`${beside} is set beside the panels of the library.`}`] : []
  const said = below([...mark, ...notes], format, width)
  if (format === 'markdown') return [toMarkdown(rows, named(columns), bundle), ...said].join('\n')
  return [
    `${file.record.name?.text ?? file.id}, ${target.surface.id?.value ?? ''}\n`,
    taken.length > 0 ? toText(taken, named(columns), { width, bundle }) : '',
    lines(taken, inCatalogue`Warranty void here`, ({ warranty_void: why }) => why),
    lines(
      taken,
      inCatalogue`Not known`,
      ({ not_known: list }) => list.map((one) => translated(one, bundle)).join(', ') || null,
    ),
    lines(out, inCatalogue`Excluded`, ({ excluded }) => excluded),
    said.join(''),
  ]
    .filter((part) => part !== '')
    .join('\n')

  /** The panel that is set beside the others is marked. */
  function named(columns: readonly Column<SurfaceRow>[]): readonly Column<SurfaceRow>[] {
    return columns.map((column) =>
      column.key === 'panel' ? { ...column, cell: ({ panel }) => ({ value: panel, text: name(panel) }) } : column,
    )
  }

  function lines(list: readonly SurfaceRow[], head: string, of: (row: SurfaceRow) => string | null): string {
    const found = list.flatMap((row) => {
      const why = of(row)
      return why === null ? [] : [{ panel: row.panel, why }]
    })
    if (found.length === 0) return ''
    return toText(
      found,
      [
        { key: 'panel', label: head, cell: ({ panel }) => ({ value: panel, text: name(panel) }) },
        { key: 'why', label: '', cell: ({ why }) => ({ value: why, text: why }) },
      ],
      { width, bundle },
    )
  }
}

/** Those that --filter leaves, in the order of --sort, the excluded last. */
export function rowsShown({ rows }: OnSurface, { sort, filter }: TableOptions): readonly SurfaceRow[] {
  const kept = filtered(rows, surfaceColumns, filter)
  const inOrder = (isOut: boolean) =>
    sorted(
      kept.filter(({ excluded }) => (excluded !== null) === isOut),
      surfaceColumns,
      sort,
    )
  return [...inOrder(false), ...inOrder(true)]
}
