import type { SurfaceRow } from '../../review/choosing/row.ts'
import { chosen, filtered, sorted } from './column.ts'
import { toCsv, toMarkdown, toText } from './formats.ts'
import type { SurfaceComparison } from './on-surface.ts'
import type { TableOptions } from './options.ts'
import { shownColumns, surfaceColumns } from './surface-columns.ts'

/** Panels on one surface as they are printed. */
export function surfaceReport(
  { file, place, rows: all }: SurfaceComparison,
  { format, sort, filter, columns: names }: TableOptions,
  width: number,
): string {
  const kept = filtered(all, surfaceColumns, filter)
  const inOrder = (rows: readonly SurfaceRow[]) => sorted(rows, surfaceColumns, sort)
  const taken = inOrder(kept.filter(({ excluded }) => excluded === null))
  const out = inOrder(kept.filter(({ excluded }) => excluded !== null))
  const rows = [...taken, ...out]
  const surface = place.surface.id?.value ?? ''
  if (format === 'json') return `${JSON.stringify({ version: 1, system: file.id, surface, rows }, null, 2)}\n`
  if (format === 'csv') return toCsv(rows, chosen(surfaceColumns, names))
  if (format === 'markdown') return toMarkdown(rows, chosen([...surfaceColumns], names))
  return [
    `${file.record.name?.text ?? file.id}, ${surface}\n`,
    taken.length > 0 ? toText(taken, names === undefined ? shownColumns : chosen(surfaceColumns, names), width) : '',
    lines(taken, 'Warranty void here', ({ warranty_void: why }) => why),
    lines(taken, 'Not all that fit can be wired', notAll),
    lines(taken, 'Not known', ({ not_known: list }) => list.join(', ') || null),
    lines(out, 'Excluded', ({ excluded }) => excluded),
    `On the front: no other gives at least as much energy a year for no more weight and no more money.
Energy and price are those of the panels on this surface. The figures are an aid; local codes and licensed practice decide.\n`,
  ]
    .filter((part) => part !== '')
    .join('\n')

  function lines(list: readonly SurfaceRow[], head: string, of: (row: SurfaceRow) => string | null): string {
    const found = list.flatMap((row) => {
      const why = of(row)
      return why === null ? [] : [{ panel: row.panel, why }]
    })
    if (found.length === 0) return ''
    return toText(
      found,
      [
        { key: 'panel', label: head, cell: ({ panel }) => ({ value: panel, text: panel }) },
        { key: 'why', label: '', cell: ({ why }) => ({ value: why, text: why }) },
      ],
      width,
    )
  }
}

function notAll({ count, strings }: SurfaceRow): string | null {
  const wired = strings ? strings.in_series * strings.in_parallel : count
  return wired === count ? null : `${wired} of ${count}; the figures are of these`
}
