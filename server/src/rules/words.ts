import { figure, sayFrom, type Figure, type Param, type Catalogue, type Said } from '../findings/message.ts'
import type { Field, Measure } from '../records/field.ts'

/** Phrases that several rules share. */
export const words = {
  id: 'words',
  messages: {
    panel: 'a panel',
    panelOfKind: 'a {kind} panel',
    oneYear: '{count} year',
    years: '{count} years',
    times: '{ratio} times',
    above: '{share} above',
    below: '{share} below',
    inPercent: ' ({coefficient})',
    ofFamily: '{names} and {more} more of its family',
    minusLost: 'minus sign lost',
  },
} as const satisfies Catalogue

export const word = sayFrom(words)

/** A count of years as it was typed: `1 year`, `5 years`. */
export const inYears = (count: Field): Said => word({ say: count.value === 1 ? 'oneYear' : 'years', with: { count } })

/** A deviation from 1: `4.2 % above`. */
export function offBy(ratio: number): Said {
  const by = Math.abs(ratio - 1)
  if (by >= 1) return word({ say: 'times', with: { ratio: figure(ratio, undefined, 2) } })
  return word({ say: ratio > 1 ? 'above' : 'below', with: { share: figure(100 * by, '%', 2) } })
}

/** ` (-0.58 %/°C)` after a coefficient that was typed in volts, amperes or watts per degree; nothing after a relative one. */
export const asPercent = (typed: Measure, value: number): Param =>
  typed.quantity.dimension === 'per-kelvin'
    ? null
    : word({ say: 'inPercent', with: { coefficient: percentPerDegree(value) } })

/** `Tern 100, Tern 120 and 3 more of its family` */
export const ofFamily = (names: readonly string[]): Param =>
  names.length > 3
    ? word({ say: 'ofFamily', with: { names: { list: names.slice(0, 2) }, more: names.length - 2 } })
    : { list: names, last: 'and' }

/** A relative coefficient [1/K] as datasheets print it: -0.38 %/°C. */
export const percentPerDegree = (value: number): Figure => figure(100 * value, '%/°C')

/** Whole numbers of two or three digits in a name, one of which is nearly always the power. */
export const numbersIn = (name: string): readonly number[] =>
  [...name.matchAll(/(?<![\d.])\d{2,3}(?![\d.])/g)].map(([digits]) => Number(digits))
