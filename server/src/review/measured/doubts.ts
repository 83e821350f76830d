import type { Severity } from '../../findings/finding.ts'
import type { Difference, MeasuredString, Quantity, Reading } from './string.ts'

/** A measured value that is lower or higher than it should be. */
export interface Doubt {
  readonly reading: Reading
  readonly against: 'records' | 'strings'
  readonly by: Difference
  readonly severity: Extract<Severity, 'warning' | 'information'>
  /** The power of the string, which its voltage and current make up. */
  readonly power?: { readonly value: number; readonly expected: number }
}

/** Of the limit: a smaller difference between strings is worth a look where it is more than the meter's [1] (common practice, no source). */
const worthALook = 0.6

/** Whether a value is low, by the records where they suffice and otherwise beside the other strings. */
export function lowness(reading: Reading | undefined, limit: number): Doubt | null {
  if (!reading) return null
  const { off, apart } = reading
  if (off && off.share < -Math.max(limit, off.uncertainty))
    return { reading, against: 'records', by: off, severity: 'warning' }
  if (!apart || -apart.share <= Math.max(worthALook * limit, apart.uncertainty)) return null
  const severity = -apart.share > limit ? 'warning' : 'information'
  return { reading, against: 'strings', by: apart, severity }
}

export function height(reading: Reading | undefined, limit: number): Doubt | null {
  const off = reading?.off
  if (!reading || !off || off.share <= Math.max(limit, off.uncertainty)) return null
  return { reading, against: 'records', by: off, severity: 'warning' }
}

/** Low power, shown at Imp. */
export function lownessOfPower({ power, readings }: MeasuredString, limit: number): Doubt | null {
  const reading = readings.get('imp')
  if (!power?.off || power.expected === null || !reading) return null
  if (power.off.share >= -Math.max(limit, power.off.uncertainty)) return null
  const { value, expected } = power
  return { reading, against: 'records', by: power.off, severity: 'warning', power: { value, expected } }
}

/**
 * The values of a string that are low, one for each thing that may be wrong: what is low at both ends of the curve is reported once,
 * at its end, and what is low at the point of maximum power alone is reported for the power.
 */
export function lowValues(string: MeasuredString, limit: number): readonly Doubt[] {
  const found = lowAtEnds(string, limit)
  const isOfPower = found.every(({ reading: { quantity } }) => quantity === 'vmp' || quantity === 'imp')
  const power = isOfPower ? lownessOfPower(string, limit) : null
  return power && found.every(({ against }) => against === 'records') ? [power] : found
}

function lowAtEnds(string: MeasuredString, limit: number): readonly Doubt[] {
  const low = (quantity: Quantity) => {
    const found = lowness(string.readings.get(quantity), limit)
    return found?.severity === 'information' && isContradicted(string, quantity, limit) ? null : found
  }
  return [low('voc') ?? low('vmp'), low('isc') ?? low('imp')].flatMap((one) => one ?? [])
}

/** Isc and Imp of one string are measured by the same clamp: a small difference counts where both of them have it, on the whole. */
function isContradicted({ readings }: MeasuredString, quantity: Quantity, limit: number): boolean {
  const other = pairs[quantity]
  const [one, two] = [readings.get(quantity)?.apart, other && readings.get(other)?.apart]
  return one && two ? -(one.share + two.share) / 2 <= worthALook * limit : false
}

const pairs: Partial<Record<Quantity, Quantity>> = { isc: 'imp', imp: 'isc' }

/** Whether its current differs from that of its neighbours, so that nothing that all strings share explains it. */
export function isApart({ readings }: MeasuredString, limit: number): boolean {
  return (['isc', 'imp'] as const).some((quantity) => {
    const apart = readings.get(quantity)?.apart
    return apart ? -apart.share > Math.max(worthALook * limit, apart.uncertainty) : false
  })
}
