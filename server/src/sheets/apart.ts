import { conditionIn, symbolIn } from '../records/concepts.ts'
import { numbersIn, type Decimal } from './numbers.ts'
import type { Piece } from './page.ts'
import type { Row } from './row.ts'

/** Puts label and value apart where a sheet prints them as one text: `Weight ..... 1.9 kg`, `Peak power: 200 W`. */
export function apart(piece: Piece, isValue: (text: string) => boolean): readonly Piece[] {
  const { text } = piece
  const sign = /(?<!\s)\s*(?:[.…·_]{4,}|(?<=\p{L}[^:=]{0,80})[:=]\s)\s*/u.exec(text)
  if (!sign || sign.index < 2) return [piece]
  const value = text.slice(sign.index + sign[0].length)
  // `NOCT: 800 W/m2, 20 °C` is a heading
  if (!/\d/.test(value) || /[.…·_]{4,}/.test(value) || conditionIn(value) !== null || !isValue(value)) return [piece]
  // letters differ in width, but a value only has to be right of its label
  const at = (index: number) => piece.x + (piece.width * index) / text.length
  const part = (text: string, x: number, right: number): Piece => ({ ...piece, text, x, right, width: right - x })
  const end = sign.index + sign[0].length
  return [part(text.slice(0, sign.index), piece.x, at(sign.index)), part(value, at(end), piece.right)]
}

/** `22.1 V / 6.3 A` as its two texts. */
function pairOf(text: string): readonly string[] | null {
  const parts = text.split('/').map((part) => part.trim())
  return parts.length === 2 && parts.every((part) => /^\d[\d.,]* ?(?:[VAW]|Wp)$/.test(part)) ? parts : null
}

/** `Voc / Isc` with `22.1 V / 6.3 A` is two rows. */
function pairApart(row: Row): readonly Row[] {
  const labels = row.label.split('/').map((part) => part.trim())
  const pairs = row.values.map(({ text }) => pairOf(text))
  if (labels.length !== 2 || labels.some((l) => l.length < 2)) return [row]
  if (pairs.some((pair) => !pair || pair[0]!.at(-1) === pair[1]!.at(-1))) return [row]
  return labels.map((label, i) => ({
    ...row,
    label,
    values: row.values.map((value, at) => ({ ...value, text: pairs[at]![i]! })),
  }))
}

/** Cells that stand so close that they came out as one text: `270 W 200.3 W 275 W`. */
export function cellsApart(piece: Piece, decimal: Decimal): readonly Piece[] {
  const numbers = numbersIn(piece.text, decimal)
  const unit = numbers[0]?.unit
  const isRow = numbers.length > 1 && unit && numbers.every((n) => n.unit === unit && n.join === null)
  const between = numbers.map(({ start }, i) => piece.text.slice(numbers[i - 1]?.end ?? 0, start))
  if (!isRow || between.some((text, i) => i > 0 && !/^\s+[-+−–]?$/.test(text))) return [piece]
  const ends = numbers.map(({ end }) => end)
  return ends.map((end, i) => {
    const start = ends[i - 1] ?? 0
    const at = (index: number) => piece.x + (piece.width * index) / piece.text.length
    const text = piece.text.slice(start, i === ends.length - 1 ? undefined : end).trim()
    return { ...piece, text, x: at(start), right: at(end), width: at(end) - at(start) }
  })
}

/** `Temperature coefficient Pmax / Voc / Isc` with three values is three rows. */
export function rowsApart(row: Row): readonly Row[] {
  const pair = pairApart(row)
  if (pair.length > 1) return pair
  const parts = row.label.split('/')
  if (parts.length < 2 || parts.length !== row.values.length) return [row]
  const symbols = parts.map((part) => symbolIn(part))
  if (symbols.includes(null) || new Set(symbols).size < symbols.length) return [row]
  const common = parts[0]!.split(/\s+/).slice(0, -1).join(' ')
  return row.values.map((value, i) => ({
    ...row,
    label: `${common} ${parts[i]!.trim().split(/\s+/).at(-1)!}`,
    values: [value],
  }))
}
