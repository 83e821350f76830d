import { apart, cellsApart, rowsApart } from './apart.ts'
import { continued } from './continued.ts'
import type { Piece } from './page.ts'
import type { Row } from './row.ts'
import { stackedRows } from './stacked.ts'
import { numbersIn, plainly, unitAlone, type Decimal } from './numbers.ts'

/** Whether a text is a cell that holds a quantity, and no name, sentence or heading. */
export function isValue(text: string, decimal: Decimal): boolean {
  if (isEmpty(text)) return true
  const line = plainly(text).trim()
  const lead = /^(?:[(~≈<>=≥≤±+-]|\s|DC|dc|ca\.|max\.?|min\.?|approx\.?|up to|bis|[øØ⌀])*/.exec(line)?.[0].length ?? 0
  const numbers = numbersIn(line, decimal)
  const first = numbers[0]
  if (!first || first.start > lead + 3) return false
  if (first.unit === null && /^[-_]?(?!x ?\d)\p{L}/u.test(line.slice(first.end))) return false
  if (line.slice(first.start, first.start + 1) !== line.slice(lead, lead + 1) && first.start > lead) return false
  let rest = line
  for (const { start, end } of [...numbers].reverse()) rest = rest.slice(0, start) + ' ' + rest.slice(end)
  const words = rest.replace(/\([^()]*\)/g, ' ').match(/\p{L}{3,}/gu) ?? []
  // `25 years of power warranty`, `90 % after 10 years`
  const isPromise = numbers.some(({ unit }) => unit === 'years') && (words.length > 0 || numbers.length > 1)
  return words.length <= 2 && !isPromise
}

const isEmpty = (text: string) => /^(?:[-–—]+|n\/?a\.?|\/)$/i.test(text.trim())

/** Rows of a page; where the values of most lines come first, their labels are to the right. */
export function rowsOf(printed: readonly Piece[], decimal: Decimal): readonly Row[] {
  const rows = labelledRows(printed, decimal)
  const mirrored = labelledRows(printed.map(mirror), decimal)
  const count = (all: readonly Row[]) =>
    all.filter(({ label }) => !isValue(label, decimal)).flatMap(({ values }) => values).length
  if (count(mirrored) <= 1.3 * count(rows)) return rows
  return mirrored.map((row) => ({ ...row, labels: row.labels.map(mirror), values: row.values.map(mirror).reverse() }))
}

const mirror = (piece: Piece): Piece => ({ ...piece, x: -piece.right, right: -piece.x })

/** Finds for every value the label to its left; wrapped labels are put together again. */
function labelledRows(printed: readonly Piece[], decimal: Decimal): readonly Row[] {
  const isOne = (text: string) => isValue(text, decimal)
  const pieces = continued(
    printed
      .filter(({ text }) => text !== '/')
      .flatMap((piece) => apart(piece, isOne))
      .flatMap((piece) => cellsApart(piece, decimal)),
    isOne,
    decimal,
  )
  const values = pieces.filter(({ text }) => isValue(text, decimal) && unitAlone(text) === null)
  const texts = pieces.filter((one) => !values.includes(one))
  const labels = texts.filter(({ text }) => unitAlone(text) === null || text.length === 1)
  const units = texts.filter(({ text }) => unitAlone(text) !== null)
  const rows = new Map<Piece, Piece[]>()
  const loose: Piece[] = []
  for (const value of values) {
    const label =
      labels.find((text) => isCaption(text, value)) ??
      labelOf(
        value,
        labels.filter((l) => !units.includes(l) || !labels.some((o) => near(o, value) && o.right <= l.x)),
      )
    if (label) rows.set(label, [...(rows.get(label) ?? []), value])
    else loose.push(value)
  }
  const own = new Set([...rows.keys()])
  const found = [...rows].map(([label, cells]): Row => {
    const sorted = withoutTicks(
      [...cells].sort((a, b) => a.x - b.x),
      decimal,
    )
    const parts = [...symbolsBefore(label, labels, pieces, own), ...wrapped(label, texts, own, sorted)].sort(
      (a, b) => a.y - b.y || a.x - b.x,
    )
    const first = sorted[0]!
    const last = sorted.at(-1)!
    const unit = units.find(
      (u) =>
        near(u, first) &&
        ((label.right <= u.x + 1 && u.right <= first.x + 1) || (u.x >= last.right && u.x - last.right < 12 * u.size)),
    )
    return {
      label: parts.map((p) => p.text).join(' '),
      labels: parts,
      values: sorted,
      unit: unit ? unitAlone(unit.text) : null,
      y: first.y,
      size: label.size,
    }
  })
  const free = labels.filter((l) => !own.has(l))
  const stacked = stackedRows(loose, free)
  const rest = loose.filter((value) => !stacked.some(({ values }) => values[0] === value))
  return [...found.flatMap(rowsApart), ...stacked, ...unlabelled(rest)].sort(
    (a, b) => a.y - b.y || a.values[0]!.x - b.values[0]!.x,
  )
}

/** Bare numbers far behind a value with a unit are ticks of a chart beside the list. */
function withoutTicks(values: readonly Piece[], decimal: Decimal): readonly Piece[] {
  const unit = (value: Piece) => numbersIn(value.text, decimal).some(({ unit }) => unit !== null)
  const end = values.findIndex(
    (v, i) => i > 0 && unit(values[0]!) && !unit(v) && v.x - values[i - 1]!.right > 8 * v.size,
  )
  return end < 0 ? values : values.slice(0, end)
}

const near = (a: Piece, b: Piece) => Math.abs(a.y - b.y) <= 0.4 * Math.max(a.size, b.size)

/** The nearest text to the left on the baseline; or the nearer one whose two lines stand above and below it. */
function labelOf(value: Piece, labels: readonly Piece[]): Piece | null {
  const away = (l: Piece) => Math.max(0, value.y - l.y, l.y - (value.last ?? value.y))
  const left = labels.filter((l) => l.right <= value.x + 0.2 * value.size && away(l) <= 1.3 * value.size)
  const isBeside = (l: Piece) => away(l) <= 0.4 * Math.max(l.size, value.size)
  const exact = best(left.filter(isBeside), value)
  const about = best(
    left.filter((l) => !isBeside(l) && away(l) <= 0.85 * value.size),
    value,
  )
  if (exact && about && about.x > exact.right) return about
  return exact ?? about
}

/** A line of smaller print right below a number in large print, as on a card. */
function isCaption(text: Piece, value: Piece): boolean {
  const step = text.y - value.y
  const starts = Math.abs(text.x - value.x)
  const middles = Math.abs(text.x + text.right - value.x - value.right) / 2
  return (
    text.size < 0.8 * value.size && 0 < step && step < 1.6 * value.size && Math.min(starts, middles) < 0.5 * text.size
  )
}

const best = (labels: readonly Piece[], value: Piece): Piece | null =>
  [...labels].sort((a, b) => b.right - a.right || Math.abs(a.y - value.y) - Math.abs(b.y - value.y))[0] ?? null

/** A symbol in a column of its own has the words of the label to its left. */
function symbolsBefore(
  label: Piece,
  labels: readonly Piece[],
  pieces: readonly Piece[],
  own: ReadonlySet<Piece>,
): readonly Piece[] {
  if (label.text.length > 7) return []
  const before = best(
    labels.filter((l) => near(l, label) && l.right <= label.x && !own.has(l)),
    label,
  )
  const isApart = pieces.some((p) => before && near(p, label) && before.right < p.x && p.right < label.x)
  return before && !isApart && label.x - before.right < 15 * label.size ? [before] : []
}

/** Lines above and below that carry no value of their own, as near as lines of one paragraph. */
function wrapped(
  label: Piece,
  texts: readonly Piece[],
  own: ReadonlySet<Piece>,
  values: readonly Piece[],
): readonly Piece[] {
  const lines = [label]
  // a line with texts over the values is the head of a table
  const isHead = (t: Piece) =>
    texts.some((o) => near(o, t) && values.some((v) => o.x < v.right && v.x < o.right && o.x >= t.right))
  const free = texts.filter(
    (t) => t.font === label.font && !own.has(t) && Math.abs(t.size - label.size) < 0.1 * label.size && !isHead(t),
  )
  for (const way of [1, -1]) {
    let last = label
    for (;;) {
      const next = free.find((t) => {
        const step = (t.y - last.y) * way
        return 0 < step && step <= 1.4 * label.size && Math.abs(t.x - label.x) < 0.6 * label.size
      })
      if (!next || belongsElsewhere(next, last, own)) break
      lines.push(next)
      last = next
    }
  }
  return lines
}

/** A line between two rows belongs to the nearer one. */
function belongsElsewhere(line: Piece, to: Piece, own: ReadonlySet<Piece>): boolean {
  const mine = Math.abs(line.y - to.y)
  return [...own].some(
    (o) => o !== to && Math.abs(o.x - line.x) < 0.6 * line.size && Math.abs(o.y - line.y) < 0.97 * mine,
  )
}

/** Values in a line with no label at all: rows of a table whose first column is a number. */
function unlabelled(values: readonly Piece[]): readonly Row[] {
  const rows: Piece[][] = []
  for (const value of values) {
    const row = rows.find(([first]) => near(first!, value))
    if (row) row.push(value)
    else rows.push([value])
  }
  return rows
    .filter((row) => row.length > 2)
    .map((row): Row => {
      const [first, ...rest] = [...row].sort((a, b) => a.x - b.x)
      return { label: first!.text, labels: [first!], values: rest, unit: null, y: first!.y, size: first!.size }
    })
}
