import { conceptsIn, conditionIn, type Concept } from '../records/concepts.ts'
import { numbersIn, unitInLabel, type Decimal } from './numbers.ts'
import { around, boxOf, type Box, type Piece } from './page.ts'
import type { Row } from './row.ts'

/** A printed value with all the words that say what it is. */
export interface Cell {
  readonly page: number
  readonly table: number
  readonly row: number
  readonly text: string
  readonly box: Box
  readonly label: string
  /** Heads of its column, from the top; empty in a list. */
  readonly heads: readonly string[]
  /** The heading above its table. */
  readonly heading: string
  /** A unit in a column of its own. */
  readonly unit: string | null
  /** Which column of how many; one value of a table with several columns holds for all: -1. */
  readonly column: number
  readonly columns: number
}

/** Rows that stand below each other, with the same columns. */
interface Table {
  readonly rows: Row[]
  /** Middles of its columns. */
  readonly columns: readonly Span[]
}

interface Span {
  readonly left: number
  readonly right: number
}

/** Cells of one page: rows to tables, tables to columns with their heads. */
export function cellsOf(
  rows: readonly Row[],
  pieces: readonly Piece[],
  first: number,
  decimal: Decimal,
): readonly Cell[] {
  const values = new Set(rows.flatMap((row) => row.values))
  return tablesOf(rows, pieces).flatMap(({ rows: all, columns }, index) => {
    const own = all.findIndex((row) => !isHead(row, columns.length, decimal))
    const rows = all.slice(own < 0 ? all.length : own)
    if (rows.length === 0) return []
    const leading = all.slice(0, all.length - rows.length)
    const heads = headsOf({ rows: all, columns }, pieces, values)
    for (const row of leading) {
      heads.heading = `${heads.heading} ${row.label}`.trim()
      for (const value of row.values) heads.columns[columnOf(row, value, columns)]!.push(value.text)
    }
    return rows.flatMap((row, at) =>
      row.values.map((value): Cell => {
        const shared = row.values.length === 1 && columns.length > 1
        const column = shared ? -1 : columnOf(row, value, columns)
        return {
          page: value.page,
          table: first + index,
          row: at,
          text: value.text,
          box: around([boxOf(value)]),
          label: row.label,
          heads: shared ? [] : (heads.columns[column] ?? []),
          heading: heads.heading,
          unit: row.unit,
          column,
          columns: columns.length,
        }
      }),
    )
  })
}

function tablesOf(rows: readonly Row[], pieces: readonly Piece[]): readonly Table[] {
  const own = new Set(rows.flatMap(({ labels }) => labels))
  const headings = pieces.filter((p) => conditionIn(p.text) !== null && !own.has(p))
  const open: Row[][] = []
  for (const row of rows) {
    const table = isShares(row)
      ? undefined
      : open.find((t) => follows(t.at(-1)!, row) && !isParted(t.at(-1)!, row, headings))
    if (table) table.push(row)
    else open.push([row])
  }
  return open.map((rows) => {
    const most = Math.max(...rows.map(({ values }) => values.length))
    const full = rows.filter(({ values }) => values.length === most)
    const columns = Array.from({ length: most }, (_, i) => ({
      left: median(full.map(({ values }) => values[i]!.x)),
      right: median(full.map(({ values }) => values[i]!.right)),
    }))
    return { rows, columns }
  })
}

function follows(a: Row, b: Row): boolean {
  const gap = b.y - a.y
  if (gap <= 0 || gap > 4.2 * a.size) return false
  if (Math.abs(leftOf(a) - leftOf(b)) > 1.2 * a.size && !isAligned(a, b)) return false
  const [one, two] = [a, b].map(({ values }) => ({ left: values[0]!.x, right: values.at(-1)!.right }))
  return one!.left < two!.right + 4 * a.size && two!.left < one!.right + 4 * a.size
}

const leftOf = (row: Row) => Math.min(...row.labels.map((l) => l.x))

/** Rows with the same columns, whose labels are centred. */
const isAligned = (a: Row, b: Row): boolean =>
  a.values.length > 1 &&
  a.values.length === b.values.length &&
  a.values.every((v, i) => Math.abs(v.x + v.right - b.values[i]!.x - b.values[i]!.right) < 2 * a.size)

/** A heading between two rows, such as `At 800 W/m2`, begins another table. */
const isParted = (a: Row, b: Row, headings: readonly Piece[]): boolean =>
  headings.some((h) => a.y < h.y && h.y < b.y && h.x < b.values.at(-1)!.right && leftOf(b) < h.right)

const middle = ({ left, right }: Span) => (left + right) / 2

const median = (numbers: readonly number[]): number => [...numbers].sort((a, b) => a - b)[numbers.length >> 1]!

/** The column of a row's value: in a whole row in order, in a row of fewer cells by groups or by the nearest edge or middle. */
function columnOf({ values }: Row, value: Piece, columns: readonly Span[]): number {
  const at = values.indexOf(value)
  if (values.length === columns.length) return at
  const gaps = columns.map((c) =>
    Math.min(
      Math.abs(c.left - value.x),
      Math.abs(c.right - value.right),
      Math.abs(middle(c) - (value.x + value.right) / 2),
    ),
  )
  const near = gaps.indexOf(Math.min(...gaps))
  const share = columns.length / values.length
  return Number.isInteger(share) && values.some((v) => !columns.some((c) => v.x < c.right && c.left < v.right))
    ? at * share
    : near
}

/** The head of a table of what the rear side adds: `Rear gain | 5 % | 15 % | 25 %`. */
const isShares = ({ label, values }: Row): boolean =>
  conceptsIn(label).has('rear') && values.every(({ text }) => /^\+?\s?\d+(?:[.,]\d+)?\s?%$/.test(text))

/** Power classes or plain numbers as names of models, in a first row that says so. */
function isHead(row: Row, columns: number, decimal: Decimal): boolean {
  const { label, values } = row
  if (isShares(row)) return true
  if (columns < 2 || values.length < columns) return false
  const says = conceptsIn(label)
  const isTitle = says.has('model') || conditionIn(label) !== null || unitInLabel(label) !== null
  if (!isTitle || ['power', 'voltage', 'current', 'peak', 'open', 'short', 'cells'].some((c) => says.has(c as Concept)))
    return false
  return values.every(({ text }) => /^\d{1,4} ?(?:Wp?)?$/.test(text) && numbersIn(text, decimal).length === 1)
}

/** Lines of text above the first row: those over the columns are heads, that over the labels is the heading. */
function headsOf({ rows, columns }: Table, pieces: readonly Piece[], values: ReadonlySet<Piece>) {
  const top = rows[0]!
  const left = Math.min(...top.labels.map((l) => l.x))
  const right = columns.at(-1)!.right
  const start = Math.min(...top.labels.map((l) => l.y), top.y)
  const above = pieces.filter((p) => p.y < start - 0.4 * top.size && p.right > left - 2 && p.x < right + 6)
  const heads: string[][] = columns.map(() => [])
  let heading = ''
  let last = start
  let lines = 0
  for (const line of linesUpward(above)) {
    const y = line[0]!.y
    if (last - y > 3.6 * Math.max(top.size, line[0]!.size) || ++lines > 5) break
    const printed = line.filter((p) => values.has(p))
    if (
      printed.length > 0 &&
      !(printed.length === columns.length && printed.every(({ text }) => /^\d{2,4}$/.test(text)))
    )
      break
    const over = line.filter((p) => (p.x + p.right) / 2 > columns[0]!.left - 2 * top.size && !isLong(p))
    const sentence = (p: Piece) => isLong(p) && conditionIn(p.text) === null
    const beside = line.filter((p) => !over.includes(p) && !sentence(p))
    if (over.length > 0 && beside.every((p) => !isLong(p))) assign(over, columns, heads)
    if (beside.length > 0) heading = `${beside.map((p) => p.text).join(' ')} ${heading}`.trim()
    last = y
    if (heading && columns.length === 1 && over.length === 0) break
  }
  return { columns: heads, heading }
}

const isLong = ({ text }: Piece) => text.length > 45

/** Each head to the column that it stands over; one that is centred over several columns to all of these. */
function assign(over: readonly Piece[], columns: readonly Span[], heads: string[][]) {
  const sorted = [...over].sort((a, b) => a.x - b.x)
  const n = columns.length
  const share = sorted.length < n && n % sorted.length === 0 ? n / sorted.length : 0
  const spans = share > 1 && sorted.every((piece, k) => isOverGroup(piece, columns, share, k, sorted[0]!))
  columns.forEach((column, i) => {
    const hits = sorted.filter((p) => p.x < column.right + 1 && column.left - 1 < p.right)
    const one = spans ? sorted[Math.floor(i / share)] : (hits[0] ?? nearestPiece(sorted, column))
    if (one) heads[i]!.unshift(one.text)
  })
}

/** Heads of groups stand as far apart as the groups do; a single one stands over the middle of all columns. */
function isOverGroup(piece: Piece, columns: readonly Span[], share: number, k: number, first: Piece): boolean {
  const group = columns.slice(k * share, (k + 1) * share)
  const whole = { left: group[0]!.left, right: group.at(-1)!.right }
  const at = (piece.x + piece.right) / 2
  if (columns.length === share)
    return (
      Math.abs(at - middle(whole)) < 0.25 * (whole.right - whole.left) &&
      !(columns.length > 4 && isOverOne(piece, group))
    )
  const pitch = middle(group[0]!) - middle(columns[0]!)
  const column = (middle(columns.at(-1)!) - middle(columns[0]!)) / (columns.length - 1)
  return (
    whole.left - 0.5 * column < at &&
    at < whole.right + 0.5 * column &&
    Math.abs(at - (first.x + first.right) / 2 - pitch) < 0.35 * column
  )
}

/** Right over one column of many and hardly wider: a head of that column alone. */
const isOverOne = (piece: Piece, columns: readonly Span[]): boolean =>
  columns.some(
    (c) => Math.abs((piece.x + piece.right) / 2 - middle(c)) < 3 && piece.width < 2.2 * Math.max(c.right - c.left, 24),
  )

function nearestPiece(pieces: readonly Piece[], column: Span): Piece | undefined {
  const gap = (p: Piece) => Math.abs((p.x + p.right) / 2 - middle(column))
  const one = [...pieces].sort((a, b) => gap(a) - gap(b))[0]
  return one && gap(one) < 40 ? one : undefined
}

function linesUpward(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const lines: Piece[][] = []
  for (const piece of [...pieces].sort((a, b) => b.y - a.y)) {
    const line = lines.at(-1)
    if (line && Math.abs(line[0]!.y - piece.y) < 0.4 * piece.size) line.push(piece)
    else lines.push([piece])
  }
  return lines.map((line) => line.sort((a, b) => a.x - b.x))
}
