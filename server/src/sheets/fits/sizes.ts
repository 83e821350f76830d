import type { Concept } from '../../records/concepts.ts'
import { toBase } from '../../quantities/format.ts'
import { has, singles, fit, type Asked, type Fit } from './fit.ts'

/** Letters that stand for a side over a column of their own. */
const letters: Readonly<Record<string, 'length' | 'width' | 'thickness'>> = {
  L: 'length',
  W: 'width',
  B: 'width',
  H: 'thickness',
  T: 'thickness',
  D: 'thickness',
}

/** A crate or a pallet is thicker [m]; framed panels have 30 to 50 mm: common practice, no source. */
const mostThick = 0.1

export function sizes(asked: Asked): readonly Fit[] {
  const { says, numbers, hint, heading } = asked
  const metric = ['mm', 'cm', 'm']
  const isLength = (unit: string | null): unit is string => unit !== null && [...metric, 'in'].includes(unit)
  const sides = numbers.map((n) => ({ ...n, unit: n.unit ?? hint }))
  const groups: (typeof sides)[] = []
  for (const side of sides)
    if (side.join === 'by') groups.at(-1)?.push(side)
    else groups.push([side])
  const lengths = groups.filter((g) => g.length >= 2 && g.length <= 3 && isLength(g[0]!.unit))
  const isCrate = ([, , third]: typeof sides) =>
    third !== undefined && isLength(third.unit) && toBase(third.value, third.unit) > mostThick
  if (lengths.some(isCrate)) return []
  const isSized = has(says, 'size', 'length', 'width', 'thickness')
  // `2 x 1.2 m, 4 mm²` is a pair of cables
  if (!isSized && numbers.some(({ unit }) => unit === 'other')) return []
  const named = isSized ? 3 : 0
  if (lengths.length) {
    const keys = ['length', 'width', 'thickness']
    const turned = /\(\s?(?:w|b|width|breite|ancho|largeur|breedte)\s?(?:x|×|\*)\s?(?:l|h|length|height)/i.test(
      asked.words,
    )
    return keys.flatMap((key, i) => {
      const all = lengths.flatMap((g) => {
        // without a word on the order the longer side is the length
        const isTurned = turned || (!says.has('length') && g[1]!.value > g[0]!.value)
        const order = isTurned ? [g[1]!, g[0]!, ...g.slice(2)] : g
        return order[i] ? [order[i]] : []
      })
      return fit(`/size/${key}`, all, named)
    })
  }
  if (has(says, 'parts') && !has(says, 'thickness', 'size')) return []
  const one = singles(asked, [...metric, 'in']).filter((n) => n.value > 0)
  if (!one.length || has(says, 'radius', 'bend'))
    return one.length && says.has('radius') ? fit('/limits/bend_radius', one, 3) : []
  const letter = [asked.cell.label, ...asked.cell.heads]
    .map((text) => letters[text.trim().toUpperCase()])
    .find((key) => key !== undefined)
  const exact = (key: Concept) =>
    says.has(key) || letter === key
      ? 3
      : has(says, 'length', 'width', 'thickness') || letter
        ? -3
        : has(says, 'parts') || heading.has('pallet')
          ? -3
          : 0
  if (letter) return fit(`/size/${letter}`, one, 3)
  const thin = one[0]!.unit === 'mm' && one[0]!.value <= 60
  // the height of a panel that hangs is its length
  const isHigh = !thin && says.has('thickness') && !has(says, 'length', 'width', 'parts') && !heading.has('pallet')
  if (isHigh) return fit('/size/length', one, 2)
  return thin
    ? fit('/size/thickness', one, exact('thickness'))
    : [...fit('/size/length', one, exact('length')), ...fit('/size/width', one, exact('width'))]
}
