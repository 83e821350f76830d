import type { Said } from '../../findings/message.ts'
import type { Candidate } from './candidate.ts'
import { onceEach } from '../../records/once-each.ts'
import { coefficients } from '../fields.ts'
import { isOfGlass } from '../model/group.ts'
import { mostOfForm, perFurtherDecimal } from './finer.ts'
import { index, pointers, type Evidence, type Reading } from '../evidence.ts'
import { decimalsOf, isAbsolute, takeApart, type Printed } from './printed.ts'

/** Decimals that such a value is printed with where the record has no other like it. */
const usualDecimals: Readonly<Record<number, number>> = {
  [index.pmax]: 0,
  [index.vmp]: 1,
  [index.imp]: 2,
  [index.voc]: 1,
  [index.isc]: 2,
  [index.efficiency]: 1,
  [index.length]: 0,
  [index.width]: 0,
  [index.gamma]: 2,
  [index.beta]: 2,
  [index.alpha]: 3,
  [index.noct]: 0,
  [index.noctPmax]: 1,
  [index.noctVmp]: 1,
  [index.noctImp]: 2,
}
const alike: readonly (readonly number[])[] = [
  [index.vmp, index.voc, index.noctVmp],
  [index.imp, index.isc, index.noctImp],
  [index.gamma, index.beta],
]

const othersLike = pointers.map((_, field) =>
  (alike.find((group) => group.includes(field)) ?? []).filter((other) => other !== field),
)

/** What one field says, taken apart. */
export interface TypedField extends Printed {
  readonly field: number
  readonly text: string
  /** Base units in one unit of the text, and the value of its 0. */
  readonly factor: number
  readonly zero: number
  readonly decimals: number
  /** Logarithm of the chance that all fields like it lost a last zero. */
  readonly more: number
  /** It is a coefficient that sheets print with as many decimals as the one like it. */
  readonly isLikeOthers: boolean
}

/** What a field says, by its index. */
export type Read = (field: number) => TypedField | undefined

/** A text is taken apart once, as each field asks for those like it. */
const apart = onceEach(({ text }: Reading) => {
  const printed = takeApart(text)
  return printed && { ...printed, isAbsolute: isAbsolute(text), isFahrenheit: fahrenheit.test(printed.rest) }
})

export function typedField(evidence: Evidence, field: number): TypedField | undefined {
  const reading = evidence.readings[pointers[field]!]
  const printed = reading && apart(reading)
  if (!printed) return undefined
  const { number: digits, rest } = printed
  const number = Number(digits)
  const zero = printed.isFahrenheit && field === index.noct ? -32 / 1.8 : 0
  const factor = number !== 0 ? (reading.value - zero) / number : rest.includes('%') ? 0.01 : 1
  let [withDecimals, most] = [0, 0]
  for (const other of othersLike[field]!) {
    const beside = evidence.readings[pointers[other]!]
    const parts = beside && apart(beside)
    if (!parts?.number.includes('.') || parts.isAbsolute !== printed.isAbsolute) continue
    withDecimals++
    most = Math.max(most, decimalsOf(parts.number))
  }
  const usual = withDecimals > 0 ? most : usualDecimals[field]!
  const more = -2.3 * Math.max(1, withDecimals)
  const isLikeOthers = coefficients.includes(field) && rest.includes('%') && isOfGlass(evidence)
  return {
    number: digits,
    rest,
    field,
    text: reading.text,
    factor,
    zero,
    decimals: Math.min(usual, 3),
    more,
    isLikeOthers,
  }
}

const fahrenheit = /[F℉]/

export const volts: readonly number[] = [index.vmp, index.voc, index.noctVmp]

/** What sheets print without decimals, in the units that have none. */
const whole: readonly number[] = [index.length, index.width, index.noct]

/** Nobody means a number that ends with its point; how rare it is otherwise is estimated. */
const unfinished = 9

/** A printed form with another count of decimals than its like is less likely; volts lose a last zero, but not both. */
function form(p: TypedField, number: string): number {
  const more = decimalsOf(number) - p.decimals
  if (number.endsWith('.')) return -unfinished
  if (more === 0) return 0
  if (p.decimals === 0 && whole.includes(p.field)) return -4 * more
  if (more < 0) return volts.includes(p.field) ? (number.includes('.') ? -0.7 : -3) : 1.5 * more
  if (p.isLikeOthers) {
    const beyond = decimalsOf(number) - Math.max(p.decimals, usualDecimals[p.field]!)
    if (beyond > 0) return -perFurtherDecimal * beyond
  }
  return p.field === index.alpha
    ? -2 * more
    : volts.includes(p.field)
      ? more * p.more
      : more === 1 && decimalsOf(p.number) > p.decimals
        ? -1
        : -2.5 * more
}

/** The field with another number, and what its printed form adds to the chance. Chances of forms are estimated. */
export function simple(p: TypedField, number: string, why: Said, chance: number): Candidate {
  const gain = Math.min(
    p.number.endsWith('.') ? unfinished : volts.includes(p.field) ? 6 : p.isLikeOthers ? mostOfForm : 3,
    form(p, number) - form(p, p.number),
  )
  const power = p.field === index.pmax && p.factor === 1 ? roundPower(number) - roundPower(p.number) : 0
  return {
    fields: [p.field],
    values: [Number(number) * p.factor + p.zero],
    halves: [0.5 * 10 ** -decimalsOf(number) * p.factor],
    texts: [number + p.rest],
    why,
    prior: chance + gain + power,
  }
}

/** Power classes come in steps of 5 W (98 % of the listed open ratings). */
const roundPower = (number: string) => (Number(number) % 5 === 0 ? 0 : Number(number) < 100 ? -0.5 : -1.5)
