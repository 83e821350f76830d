import type { Piece } from './page.ts'
import type { Row } from './row.ts'

/**
 * Labels above their values, as in a grid of small cells. A line of values below that would make it a table, whose heads say
 * the same of every line.
 *
 * @param values  those that have no label beside them
 */
export function stackedRows(values: readonly Piece[], labels: readonly Piece[]): readonly Row[] {
  const found = values.flatMap((value) => {
    const label = labels.find((l) => isAbove(l, value))
    return label && !values.some((v) => isAbove(value, v)) ? [{ label, value }] : []
  })
  const once = found.filter(({ label }) => found.filter((o) => o.label === label).length === 1)
  return once.map(({ label, value }) => ({
    label: label.text,
    labels: [label],
    values: [value],
    unit: null,
    y: value.y,
    size: label.size,
  }))
}

function isAbove(upper: Piece, lower: Piece): boolean {
  const step = lower.y - upper.y
  const size = Math.max(upper.size, lower.size)
  const starts = Math.abs(upper.x - lower.x)
  const middles = Math.abs(upper.x + upper.right - lower.x - lower.right) / 2
  return 0.5 * size < step && step < 1.7 * size && Math.min(starts, middles) < 0.5 * size
}
