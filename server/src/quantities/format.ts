import { fromBase } from './convert.ts'
import type { Dimension } from './dimension.ts'
import { unitsFor } from './kinds.ts'
import type { Quantity } from './quantity.ts'
import { findUnit } from './units.ts'

export { fromBase, toBase } from './convert.ts'
export { unitsFor } from './kinds.ts'

/** Up to so many significant digits, never rounding whole units away: 110, 0.6426, 31536000. */
export function formatNumber(value: number, significant: number): string {
  if (!Number.isFinite(value)) return 'not a number'
  const size = Math.abs(value)
  if (size === 0) return '0'
  if (size < 1e-12 || size >= 1e15) return value.toPrecision(significant)
  const exponent = Math.floor(Math.log10(Number(size.toPrecision(significant))))
  return trimmed(value.toFixed(Math.max(0, significant - 1 - exponent)))
}

/** A number that is in `unit` already, short, for a message: phrase`110 W`, `17.11 %` for 0.1711 in `1`. */
export function formatIn(value: number, unit: string, significant = 4): string {
  const { symbol, times } = shown[unit] ?? { symbol: unit, times: 1 }
  const number =
    isPrice(unit) && Math.abs(value) >= 1 ? trimmed(value.toFixed(2), 2) : formatNumber(value * times, significant)
  return symbol ? `${number} ${symbol}` : number
}

export interface Alternative {
  readonly unit: string
  /** As it could stand in the record, with no more digits than were printed. */
  readonly text: string
}

/** The same quantity in the other usual units of its dimension, where the number stays handy; one unit of each size. */
export function alternatives(quantity: Quantity): readonly Alternative[] {
  const { value, upper, dimension, unit: own, kind } = quantity
  const sizes = new Set([sizeOf(own)])
  const others = unitsFor(kind).filter((unit) => {
    if (findUnit(unit)?.dimension !== dimension || sizes.has(sizeOf(unit))) return false
    sizes.add(sizeOf(unit))
    return handy(fromBase(upper ?? value, unit), dimension)
  })
  return others.map((unit) => ({ unit, text: textIn(quantity, unit) }))
}

function sizeOf(unit: string): string {
  const known = findUnit(unit)
  return known ? `${known.factor / known.divisor} ${known.offset}` : unit
}

function handy(number: number, dimension: Dimension): boolean {
  const size = Math.abs(number)
  if (dimension === 'temperature' || size === 0) return true
  return (dimension === 'per-kelvin' ? 1e-4 : 0.1) <= size && size < 1e5
}

function textIn({ value, upper, half, kind }: Quantity, unit: string): string {
  const step = Math.abs(fromBase(2 * half, unit) - fromBase(0, unit))
  const places = Math.min(12, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)))
  const number = (v: number) =>
    step > 0 ? zeroless(fromBase(v, unit).toFixed(places)) : formatNumber(fromBase(v, unit), 4)
  if (upper === undefined) return `${number(value)} ${unit}`
  if (kind === 'temperature-range') return `${number(value)}..${number(upper)} ${unit}`
  return `${number(value)}/+${number(upper)} ${unit}`
}

const zeroless = (text: string) => (/^-0(?:\.0*)?$/.test(text) ? text.slice(1) : text)

/** Units that a person reads better in another way. */
const shown: Readonly<Record<string, { symbol: string; times: number } | undefined>> = {
  '1': { symbol: '%', times: 100 },
  '1/K': { symbol: '%/K', times: 100 },
  degC: { symbol: '°C', times: 1 },
}

const isPrice = (unit: string): boolean => /^[A-Z]{3}(?:\/|$)/.test(unit) && unit !== 'AWG'

/** Without zeros behind the last digit; a price of cents keeps both or none. */
function trimmed(text: string, keep = 0): string {
  if (!text.includes('.')) return zeroless(text)
  if (keep) return text.replace(/\.0+$/, '')
  return zeroless(text.replace(/(?<!0)0+$/, '').replace(/\.$/, ''))
}
