import { correctFirst } from '../../check/with-errors.ts'
import type { SurfaceRow } from '../../review/choosing/row.ts'
import { answerCell, type Column } from '../../rows/cell.ts'
import { toMarkdown } from '../../rows/write-columns.ts'
import { chosen, filtered, sorted } from '../tables/column.ts'
import { foldWords } from '../tables/fitted-table.ts'
import { noteInMarkdown, toCsv, toText, type Shown } from '../tables/formats.ts'
import { jsonText } from '../visible.ts'
import type { OnSurface } from './on-surface.ts'
import type { TableOptions } from '../tables/options.ts'
import { isPart, shownColumns, surfaceColumns } from './surface-columns.ts'
import { translated } from '../../wording/bundle.ts'
import { inCatalogue, sayIn } from '../../wording/phrase.ts'

type Say = ReturnType<typeof sayIn>

/** What "4 of 8" in the table means, by its own first example. */
function fewer({ count, strings }: SurfaceRow, say: Say): string {
  const wired = strings!.in_series * strings!.in_parallel
  return say`${wired} of ${count}: ${count} fit; the wiring and the customer's limits allow ${wired}. All figures are of those ${wired}.`
}

/** Panels on one surface as they are printed. */
export function surfaceReport(
  { file, target, rows: all, beside, notCounted, withErrors }: OnSurface,
  { format, sort, filter, columns: names }: TableOptions,
  { width, bundle }: Shown,
): string {
  const say = sayIn(bundle)
  const kept = filtered(all, surfaceColumns, filter)
  const inOrder = (rows: readonly SurfaceRow[]) => sorted(rows, surfaceColumns, sort)
  const taken = inOrder(kept.filter(({ excluded }) => excluded === null))
  const out = inOrder(kept.filter(({ excluded }) => excluded !== null))
  const rows = [...taken, ...out]
  const name = (panel: string) => (panel === beside ? `${panel} *` : panel)
  const surface = target.surface.id?.value ?? ''
  const besideColumn: Column<SurfaceRow> = {
    key: 'beside',
    label: inCatalogue`set beside`,
    cell: ({ panel }) => answerCell(panel === beside, bundle),
  }
  if (format === 'json')
    return jsonText({
      version: 1,
      system: file.id,
      surface,
      ...(beside !== null && { beside }),
      rows,
      ...(notCounted.length > 0 && { not_checked: notCounted }),
      ...(withErrors.length > 0 && { with_errors: withErrors }),
    })
  if (format === 'csv') {
    const columns = chosen(surfaceColumns, names)
    return toCsv(rows, beside === null ? columns : [...columns, besideColumn])
  }
  const inError = correctFirst(withErrors, bundle)
  const mark = beside === null ? [] : [`* ${say`${beside} is set beside the panels of the library.`}`]
  if (format === 'markdown')
    return [
      toMarkdown(rows, named(chosen(surfaceColumns, names)), bundle),
      ...[...inError, ...mark, ...notCounted].map(noteInMarkdown),
    ].join('\n')
  const notes = [
    ...inError,
    ...mark,
    ...taken
      .filter(isPart)
      .slice(0, 1)
      .map((row) => fewer(row, say)),
    ...notCounted,
    say`On the front: no other gives at least as much energy a year for no more weight and no more money.`,
    say`Energy and price are those of the panels on this surface. The figures are an aid; local codes and licensed practice decide.`,
  ]
  return [
    `${file.record.name?.text ?? file.id}, ${surface}\n`,
    taken.length > 0
      ? toText(taken, named(names === undefined ? shownColumns : chosen(surfaceColumns, names)), { width, bundle })
      : '',
    lines(taken, inCatalogue`Warranty void here`, ({ warranty_void: why }) => why),
    lines(
      taken,
      inCatalogue`Not known`,
      ({ not_known: list }) => list.map((one) => translated(one, bundle)).join(', ') || null,
    ),
    lines(out, inCatalogue`Excluded`, ({ excluded }) => excluded),
    notes.map((note) => `${foldWords(note, width).join('\n')}\n`).join(''),
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
