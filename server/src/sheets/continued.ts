import { numbersIn, plainly, unitAlone, type Decimal } from './numbers.ts'
import type { Piece } from './page.ts'

/** Joins cells whose text goes on in the next line: `1280 x 750 x 3` above `mm`, `(73.9 x 42.8 x` above `1.4 in)`. */
export function continued(
  pieces: readonly Piece[],
  isValue: (text: string) => boolean,
  decimal: Decimal,
): readonly Piece[] {
  const taken = new Set<Piece>()
  const lines = [...pieces].sort((a, b) => a.y - b.y)
  const joined = lines.map((first) => {
    let cell = first
    if (taken.has(first) || !isValue(first.text)) return cell
    for (let y = first.y, next: Piece | undefined; (next = below(cell, y, lines)) && !taken.has(next); y = next.y) {
      if (!goesOn(cell.text, next.text, decimal)) break
      taken.add(next)
      const x = Math.min(cell.x, next.x)
      const right = Math.max(cell.right, next.right)
      cell = { ...cell, text: `${cell.text} ${next.text}`, x, right, width: right - x, last: next.y }
    }
    return cell
  })
  return joined.filter((_, i) => !taken.has(lines[i]!))
}

const below = (cell: Piece, y: number, pieces: readonly Piece[]): Piece | undefined =>
  pieces.find((p) => 0 < p.y - y && p.y - y <= 1.4 * cell.size && p.x < cell.right && cell.x < p.right)

function goesOn(text: string, next: string, decimal: Decimal): boolean {
  const line = plainly(text)
  const isOpen = line.lastIndexOf('(') > line.lastIndexOf(')') || /(?:\d ?(?:mm|cm|in)? ?x|±|~|\/)$/.test(line.trim())
  if (isOpen || /^\/\s?\d|^x\s/.test(plainly(next))) return true
  // in brackets the same in another unit, and not the next row
  const units = [text, next].map((part) => numbersIn(part, decimal).at(-1)?.unit)
  if (/^\(\s?\d/.test(next) && units[0] !== units[1]) return true
  const sides = (part: string) => numbersIn(part, decimal).filter(({ join }) => join === 'by').length
  if (sides(text) > 0 && sides(text) === sides(next)) return true
  const isUnit = unitAlone(next) ?? unitAlone(next.split(/[ (]/)[0]!)
  return isUnit !== null && numbersIn(text, decimal).at(-1)?.unit === null
}
