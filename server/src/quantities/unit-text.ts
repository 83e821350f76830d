import { editDistance } from './edit-distance.ts'
import { isCurrency } from './currencies.ts'
import type { Dimension } from './dimension.ts'
import { kinds } from './kinds.ts'
import type { QuantityKind } from './quantity.ts'
import { findUnit, units } from './units.ts'

/** A unit that was typed: its usual symbol, and whether the spelling was only nearly right (`w` for `W`). */
export interface UnitFound {
  readonly symbol: string
  readonly dimension: Dimension
  readonly nearly?: true
}

/** Blanks, powers and `per` aside: `% per deg C` is `%/degC`. */
export const unitKey = (text: string): string =>
  text
    .replace(/\bper\b/i, '/')
    .replace(/[\s^]+/g, '')
    .replace(/\.$/, '')

/** The unit of `kind` that a text spells, or null. */
export function unitOfKind(text: string, kind: QuantityKind): UnitFound | null {
  const key = unitKey(text)
  const { dimensions } = kinds[kind]
  if (kind === 'money') return currency(key)
  const exact = findUnit(key)
  if (exact && dimensions.includes(exact.dimension)) return exact
  const lower = findUnit(key.toLowerCase())
  if (lower && dimensions.includes(lower.dimension) && !prefixed.test(key)) return lower
  const folded = foldedUnits(kind).get(key.toLowerCase())
  return folded && !prefixed.test(key) ? { ...folded, nearly: true } : null
}

/** The unit of any kind that a text spells exactly, or null. */
export function unitOfAnyKind(text: string): UnitFound | null {
  const key = unitKey(text)
  return findUnit(key) ?? (isCurrency(key) ? { symbol: key, dimension: 'money' } : null)
}

/** A thousandth or a million: here upper and lower case differ, so nothing is guessed. */
const prefixed = /^[mM](W|V|A|J|Ω|ohm)/i

function currency(key: string): UnitFound | null {
  if (isCurrency(key)) return { symbol: key, dimension: 'money' }
  const upper = key.toUpperCase()
  return isCurrency(upper) ? { symbol: upper, dimension: 'money', nearly: true } : null
}

const folds = new Map<QuantityKind, Map<string, UnitFound>>()

function foldedUnits(kind: QuantityKind): Map<string, UnitFound> {
  let fold = folds.get(kind)
  if (!fold) {
    const { dimensions } = kinds[kind]
    const own = [...units].filter(([spelling, unit]) => dimensions.includes(unit.dimension) && !prefixed.test(spelling))
    fold = new Map(own.map(([spelling, unit]) => [spelling.toLowerCase(), unit]))
    folds.set(kind, fold)
  }
  return fold
}

/** Units of `kind` that a mistyped one may have meant, likeliest first, never empty. */
export function nearestUnits(text: string, kind: QuantityKind, usual: string): readonly string[] {
  const word = text.replace(/^[-_[(]+/, '').split(/[\s()[\]@/]/)[0] ?? ''
  const within = word === '' ? null : unitOfKind(word, kind) // W STC, [W], USD/W
  if (within) return [within.symbol]
  const key = unitKey(text)
  const { dimensions, units: symbols } = kinds[kind]
  const spellings: [string, string][] = kind === 'money' ? symbols.map((s) => [s, s]) : []
  for (const [spelling, unit] of units)
    if (unit.symbol !== '1' && dimensions.includes(unit.dimension)) spellings.push([spelling, unit.symbol])
  const near = spellings
    .map(([spelling, symbol]) => ({
      symbol,
      off: distance(key, spelling) + (spelling.length === key.length ? 0 : 0.1),
    }))
    .filter(({ symbol, off }) => off < 1.5 + Math.floor(symbol.length / 6) && off < Math.max(2, key.length))
    .sort((a, b) => a.off - b.off)
  return [...new Set([...near.map(({ symbol }) => symbol), usual])].slice(0, 3)
}

/** The unit of `kind` that begins with the one that was typed: % of %/°C, mm of mm2. */
export function completedUnit(text: string, kind: QuantityKind): string | undefined {
  const key = unitKey(text)
  return kinds[kind].units.find((s) => s.startsWith(`${key}/`) || s === `${key}2` || s === `${key}h`)
}

/** Another case is half an edit; texts of very unlike lengths are not looked at. */
const distance = (a: string, b: string): number => (Math.abs(a.length - b.length) > 3 ? 4 : editDistance(a, b, unlike))

const unlike = (a: string, b: string): number => (a === b ? 0 : a.toLowerCase() === b.toLowerCase() ? 0.5 : 1)
