import { conditionIn, symbolIn } from '../records/concepts.ts'
import type { Piece } from './page.ts'
import type { Row } from './row.ts'

/** Puts label and value apart where a sheet prints them as one text: `Weight ..... 1.9 kg`, `Peak power: 200 W`. */
export function apart(piece: Piece, isValue: (text: string) => boolean): readonly Piece[] {
  const { text } = piece
  const sign = /(?<!\s)\s*(?:[.…·_]{4,}|(?<=\p{L}[^:=]{0,80})[:=]\s)\s*/u.exec(text)
  if (!sign || sign.index < 2) return [piece]
  const value = text.slice(sign.index + sign[0].length)
  // `NOCT: 800 W/m2, 20 °C` is a heading
  if (!/\d/.test(value) || conditionIn(value) !== null || !isValue(value)) return [piece]
  // letters differ in width, but a value only has to be right of its label
  const at = (index: number) => piece.x + (piece.width * index) / text.length
  const part = (text: string, x: number, right: number): Piece => ({ ...piece, text, x, right, width: right - x })
  const end = sign.index + sign[0].length
  return [part(text.slice(0, sign.index), piece.x, at(sign.index)), part(value, at(end), piece.right)]
}

const pairOf = /^([^/]*?\d ?(?:[VAW]|Wp))\s*\/\s*(\d[^/]*?\d? ?(?:[VAW]|Wp))$/

/** `Voc / Isc` with `22.1 V / 6.3 A` is two rows. */
function pairApart(row: Row): readonly Row[] {
  const labels = row.label.split(/\s*\/\s*/)
  const pairs = row.values.map(({ text }) => pairOf.exec(text))
  if (labels.length !== 2 || labels.some((l) => l.length < 2)) return [row]
  if (pairs.some((pair) => !pair || pair[1]!.at(-1) === pair[2]!.at(-1))) return [row]
  return labels.map((label, i) => ({
    ...row,
    label,
    values: row.values.map((value, at) => ({ ...value, text: pairs[at]![i + 1]! })),
  }))
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
