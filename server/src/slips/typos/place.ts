import type { Said } from '../../findings/message.ts'
import type { Candidate } from './candidate.ts'
import { onceEach } from '../../records/once-each.ts'
import { at, pointers, type Evidence, type Reading } from '../evidence.ts'
import { decimalsOf, isAbsolute, takeApart, type Printed } from './printed.ts'

/** Decimals that such a value is printed with where the record has no other like it. */
const usualDecimals: Readonly<Record<number, number>> = {
  [at.pmax]: 0,
  [at.vmp]: 1,
  [at.imp]: 2,
  [at.voc]: 1,
  [at.isc]: 2,
  [at.efficiency]: 1,
  [at.length]: 0,
  [at.width]: 0,
  [at.gamma]: 2,
  [at.beta]: 2,
  [at.alpha]: 3,
  [at.noct]: 0,
  [at.noctPmax]: 1,
  [at.noctVmp]: 1,
  [at.noctImp]: 2,
}
const alike: readonly (readonly number[])[] = [
  [at.vmp, at.voc, at.noctVmp],
  [at.imp, at.isc, at.noctImp],
  [at.gamma, at.beta],
]

/** What one field says, taken apart. */
export interface Place extends Printed {
  readonly place: number
  readonly text: string
  /** Base units in one unit of the text, and the value of its 0. */
  readonly factor: number
  readonly zero: number
  readonly decimals: number
  /** Logarithm of the chance that all fields like it lost a last zero. */
  readonly more: number
}

/** What a field says, by its place. */
export type Read = (place: number) => Place | undefined

/** A text is taken apart once, as each field asks for those like it. */
const apart = onceEach(({ text }: Reading): Printed | null => takeApart(text))

export function placeOf(evidence: Evidence, place: number): Place | undefined {
  const reading = evidence.readings[pointers[place]!]
  const printed = reading && apart(reading)
  if (!printed) return undefined
  const number = Number(printed.number)
  const zero = fahrenheit.test(printed.rest) && place === at.noct ? -32 / 1.8 : 0
  const factor = number !== 0 ? (reading.value - zero) / number : printed.rest.includes('%') ? 0.01 : 1
  const others = (alike.find((group) => group.includes(place)) ?? []).filter((p) => p !== place)
  const decimals = others.flatMap((p) => {
    const other = evidence.readings[pointers[p]!]
    const parts = other && apart(other)
    return parts && isAbsolute(other.text) === isAbsolute(reading.text) && parts.number.includes('.')
      ? [decimalsOf(parts.number)]
      : []
  })
  const usual = decimals.length > 0 ? Math.max(...decimals) : usualDecimals[place]!
  const more = -2.3 * Math.max(1, decimals.length)
  return { ...printed, place, text: reading.text, factor, zero, decimals: Math.min(usual, 3), more }
}

const fahrenheit = /[F℉]/

export const volts: readonly number[] = [at.vmp, at.voc, at.noctVmp]

/** Nobody means a number that ends with its point; how rare it is otherwise is judged. */
const unfinished = 9

/** A printed form with another count of decimals than its like is less likely; volts lose a last zero, but not both. */
function form(p: Place, number: string): number {
  const more = decimalsOf(number) - p.decimals
  if (number.endsWith('.')) return -unfinished
  if (more === 0) return 0
  if (more < 0) return volts.includes(p.place) ? (number.includes('.') ? -0.7 : -3) : 1.5 * more
  return p.place === at.alpha
    ? -2 * more
    : volts.includes(p.place)
      ? more * p.more
      : more === 1 && decimalsOf(p.number) > p.decimals
        ? -1
        : -2.5 * more
}

/** The field with another number, and what its printed form adds to the chance. Chances of forms are judged. */
export function simple(p: Place, number: string, why: Said, chance: number): Candidate {
  const gain = Math.min(
    p.number.endsWith('.') ? unfinished : volts.includes(p.place) ? 6 : 3,
    form(p, number) - form(p, p.number),
  )
  const power = p.place === at.pmax && p.factor === 1 ? roundPower(number) - roundPower(p.number) : 0
  return {
    places: [p.place],
    values: [Number(number) * p.factor + p.zero],
    halves: [0.5 * 10 ** -decimalsOf(number) * p.factor],
    texts: [number + p.rest],
    why,
    prior: chance + gain + power,
  }
}

/** Power classes come in steps of 5 W (98 % of the listed open ratings). */
const roundPower = (number: string) => (Number(number) % 5 === 0 ? 0 : Number(number) < 100 ? -0.5 : -1.5)
