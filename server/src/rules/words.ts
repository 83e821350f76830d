import { listed } from '../findings/listed.ts'
import type { Field, Measure } from '../records/field.ts'

/** A share as people read it: 17.1 %. */
export const percent = (share: number): string => `${Number((100 * share).toPrecision(3))} %`

/** A count of years as it was typed: `1 year`, `5 years`. */
export const inYears = ({ text, value }: Field): string => `${text} ${value === 1 ? 'year' : 'years'}`

/** A deviation from 1: `4.2 % above`. */
export function offBy(ratio: number): string {
  const by = Math.abs(ratio - 1)
  return by >= 1
    ? `${Number(ratio.toPrecision(2))} times`
    : `${Number((100 * by).toPrecision(2))} % ${ratio > 1 ? 'above' : 'below'}`
}

/** ` (-0.58 %/°C)` behind a coefficient that was typed in volts, amperes or watts per degree; nothing behind a relative one. */
export const asPercent = (typed: Measure, value: number): string =>
  typed.quantity.dimension === 'per-kelvin' ? '' : ` (${percentPerDegree(value)})`

/** `Tern 100, Tern 120 and 3 more of its family` */
export function ofFamily(names: readonly string[]): string {
  if (names.length > 3) return `${names.slice(0, 2).join(', ')} and ${names.length - 2} more of its family`
  return listed(names)
}

/** A relative coefficient [1/K] as datasheets print it: -0.38 %/°C. */
export const percentPerDegree = (value: number): string => `${Number((100 * value).toPrecision(3))} %/°C`

/** Whole numbers of two or three digits in a name, one of which is nearly always the power. */
export const numbersIn = (name: string): readonly number[] =>
  [...name.matchAll(/(?<![\d.])\d{2,3}(?![\d.])/g)].map(([digits]) => Number(digits))
