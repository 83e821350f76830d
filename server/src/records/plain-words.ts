import { formatNumber, fromBase } from '../quantities/format.ts'
import { readQuantity } from '../quantities/read.ts'

/** `yes` and `off` as YAML 1.1 reads them. */
export const truthOf = (typed: string): 'true' | 'false' | null =>
  /^(?:yes|y|on)$/i.test(typed) ? 'true' : /^(?:no|n|off)$/i.test(typed) ? 'false' : null

/** `2 years` and `60 months` as a number of years; null for what is less than a tenth of one. */
export function inYears(typed: string): string | null {
  const { quantity } = readQuantity(typed, 'duration')
  const years = quantity ? fromBase(quantity.value, 'years') : 0
  return years >= 0.1 ? formatNumber(years, 3) : null
}

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

/** `May` is 5. */
export function monthNamed(typed: string): string | null {
  const at = months.indexOf(typed.slice(0, 3).toLowerCase())
  return at >= 0 && /^[a-z]{3,9}\.?$/i.test(typed) ? String(at + 1) : null
}

/** `5-9`, `May to September`, `Nov-Feb`: the months from one to another. */
export function monthsIn(typed: string): readonly string[] | null {
  const [, first = '', last = ''] = /^([a-z]+|\d+) ?(?:-|–|\.\.|to|until) ?([a-z]+|\d+)$/i.exec(typed) ?? []
  const [from, to] = [first, last].map((one) => Number(/^\d+$/.test(one) ? one : monthNamed(one)))
  if (!from || !to || from > 12 || to > 12) return null
  return Array.from({ length: ((to - from + 12) % 12) + 1 }, (_, i) => String(((from - 1 + i) % 12) + 1))
}
