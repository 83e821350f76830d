import { isCurrency } from './currencies.ts'
import { gaugeArea, gaugeOf } from './gauge.ts'
import { findUnit } from './units.ts'

/** A number in `unit` as a number in the base unit of its dimension; money keeps its currency. Throws on an unknown unit. */
export function toBase(number: number, unit: string): number {
  if (unit === 'AWG') return gaugeArea(number)
  const known = findUnit(unit)
  if (known) return ((number - known.offset) * known.factor) / known.divisor + 0 // no negative zero
  if (isCurrency(unit)) return number
  throw new Error(`no such unit: ${unit}`)
}

/** The way back: a value in the base unit as a number in `unit`. Throws on an unknown unit. */
export function fromBase(value: number, unit: string): number {
  if (unit === 'AWG') return gaugeOf(value)
  const known = findUnit(unit)
  if (known) return (value * known.divisor) / known.factor + known.offset
  if (isCurrency(unit)) return value
  throw new Error(`no such unit: ${unit}`)
}
