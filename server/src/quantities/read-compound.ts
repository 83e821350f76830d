import { toBase } from './convert.ts'
import type { Draft, Task } from './draft.ts'
import { scanNumber } from './number.ts'

const pairs = {
  length: {
    big: 'ft',
    small: 'in',
    form: /^\s*([-+]?)(\d+)\s*(?:'|ft\.?|feet|foot)\s*(?:-\s*)?(\d(?:[\d\s./-]*[\d./-])?)\s*(?:"|''|in\.?|inch|inches)\s*$/i,
  },
  mass: {
    big: 'lb',
    small: 'oz',
    form: /^\s*([-+]?)(\d+)\s*(?:lbs?\.?|pounds?)\s*(?:,\s*)?(\d(?:[\d\s./-]*[\d./-])?)\s*(?:oz\.?|ounces?)\s*$/i,
  },
} as const

/** Feet and inches (`5' 3 1/2"`), pounds and ounces. */
export function readCompound({ plain, kind }: Task): Draft | null {
  if (kind !== 'length' && kind !== 'mass') return null
  const { big, small, form } = pairs[kind]
  const match = form.exec(plain.text)
  if (!match) return null
  const [, sign, whole, part = ''] = match
  const number = scanNumber(part, 0, true)
  if (!number || number.end !== part.length || number.odd || number.ambiguous) return null
  const value = (sign === '-' ? -1 : 1) * (toBase(Number(whole), big) + toBase(number.value, small))
  const half = toBase(number.half, small)
  return { quantity: { kind, dimension: kind, value, unit: small, unitDefaulted: false, half }, notes: [] }
}
