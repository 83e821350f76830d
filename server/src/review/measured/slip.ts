import type { Suspect } from '../../findings/rule.ts'
import { isOff, namesOf, quantities, unitsOf, type MeasuredString, type Quantity } from './string.ts'

/** A typing mistake that would explain what a measurement says. */
export interface Slip {
  readonly kind: 'decimal point moved' | 'exchanged' | 'strings exchanged'
  readonly field: Suspect
  readonly name: string
  /** As the field should read. */
  readonly text: string
  /** What it should be about, where that is known. */
  readonly expected: { readonly value: number; readonly unit: string } | null
  /** The other half of an exchange. */
  readonly also?: { readonly field: Suspect; readonly text: string; readonly name: string }
  /** Strings of which nothing more is said until it is corrected. */
  readonly strings: readonly MeasuredString[]
}

/** How near a corrected value must come to what is expected [1]: the sun of the day is uncertain, a factor of ten is not (common practice, no source). */
const near = 0.2

/** Slips of the strings of one measurement, one a string at most; a sun that fits no string is one for all. */
export function slipsOf(strings: readonly MeasuredString[]): readonly Slip[] {
  const sun = sunMoved(strings)
  if (sun) return [sun]
  const single = strings.flatMap((string) => exchanged(string) ?? pointMoved(string, strings) ?? [])
  const rest = strings.filter((one) => !single.some((slip) => slip.strings.includes(one)))
  return [...single, ...stringsExchanged(rest)]
}

/** All currents, of which there are several, are ten or a hundred times what the irradiance would give. */
function sunMoved(strings: readonly MeasuredString[]): Slip | null {
  const field = strings[0]?.measurement.entry.irradiance
  const shares = strings.flatMap(({ readings }) =>
    (['isc', 'imp'] as const).flatMap((quantity) => {
      const reading = readings.get(quantity)
      return reading?.expected ? [reading.value / reading.expected] : []
    }),
  )
  if (!field || shares.length < 2) return null
  for (const places of powers) {
    const text = shares.every((share) => Math.abs(share / 10 ** places - 1) < near) ? shifted(field.text, places) : null
    if (text !== null) return { kind: 'decimal point moved', field, name: 'irradiance', text, expected: null, strings }
  }
  return null
}

const powers = [1, -1, 2, -2]
/** Times that one of two exchanged values is the other at most: Vmp and Imp of sound panels are at least half of Voc and Isc (common practice, no source). */
const mostApart = 2.2
/** How near all values of a string must come to those of another one to be its [1] (common practice, no source). */
const nearString = 0.03

/** Voc is always above Vmp of the same string, and Isc above Imp. */
function exchanged(string: MeasuredString): Slip | null {
  for (const [high, low] of [
    ['voc', 'vmp'],
    ['isc', 'imp'],
  ] as const) {
    const [upper, lower] = [string.readings.get(high), string.readings.get(low)]
    if (!upper || !lower || !(upper.value > 0) || !(lower.value > upper.value)) continue
    // a moved point is likelier than an exchange where the two are far apart
    if (lower.value > mostApart * upper.value) continue
    const also = { field: lower.field, text: upper.field.text, name: namesOf[low] }
    const { field } = upper
    return {
      kind: 'exchanged',
      field,
      name: namesOf[high],
      text: lower.field.text,
      expected: null,
      also,
      strings: [string],
    }
  }
  return null
}

/** Ten or a hundred times what the records, or else the other strings, expect, or as much less. */
function pointMoved(string: MeasuredString, strings: readonly MeasuredString[]): Slip | null {
  for (const quantity of quantities) {
    const reading = string.readings.get(quantity)
    const wanted = reading && (reading.expected ?? usualOf(quantity, string, strings))
    if (!reading || !wanted || !(reading.value > 0)) continue
    for (const places of powers) {
      const meant = reading.value * 10 ** places
      const text = Math.abs(meant / wanted - 1) < near ? shifted(reading.field.text, places) : null
      if (text === null) continue
      const { field, expected: value } = reading
      const expected = value === null ? null : { value, unit: unitsOf[quantity] }
      return { kind: 'decimal point moved', field, name: namesOf[quantity], text, expected, strings: [string] }
    }
  }
  return null
}

/** Of strings that are as long. */
function usualOf(quantity: Quantity, string: MeasuredString, strings: readonly MeasuredString[]): number | null {
  const alike = strings.filter((one) => one !== string && one.panels.length === string.panels.length)
  const values = alike.flatMap(({ readings }) => readings.get(quantity)?.value ?? []).sort((a, b) => a - b)
  return values.length > 0 ? values[values.length >> 1]! : null
}

/** Unlike strings of one array, each of which gives what the other should. */
function stringsExchanged(strings: readonly MeasuredString[]): readonly Slip[] {
  const found: Slip[] = []
  const taken = new Set<MeasuredString>()
  for (const one of strings)
    for (const other of strings) {
      if (one === other || taken.has(one) || taken.has(other) || one.number > other.number) continue
      if (!doesNotFit(one) || !doesNotFit(other) || !fitsAs(one, other) || !fitsAs(other, one)) continue
      const [field, second] = [one.entry.string, other.entry.string]
      if (!field || !second) continue
      taken.add(one).add(other)
      const also = { field: second, text: field.text, name: 'string' }
      found.push({
        kind: 'strings exchanged',
        field,
        name: 'string',
        text: second.text,
        expected: null,
        also,
        strings: [one, other],
      })
    }
  return found
}

const doesNotFit = ({ readings, limit }: MeasuredString): boolean =>
  [...readings.values()].some(({ off }) => isOff(off, limit))

/** Whether all that was measured on one string is what another is expected to give. */
export function fitsAs({ readings }: MeasuredString, { expected }: Pick<MeasuredString, 'expected'>): boolean {
  let compared = 0
  for (const { quantity, value, off } of readings.values()) {
    const wanted = expected[quantity]
    if (wanted === null || !(wanted > 0)) continue
    if (Math.abs(value / wanted - 1) > Math.max(nearString, off?.uncertainty ?? 0)) return false
    compared++
  }
  return compared > 1
}

/** A number with its decimal point moved to the right by `places`, unit and all; null for what is no plain number. */
export function shifted(text: string, places: number): string | null {
  const [, sign, whole, fraction = '', rest] = /^([-+−]?)(\d+)(?:[.,](\d+))?(\s*(?:[^\d\s.,].*)?)$/.exec(text) ?? []
  if (sign === undefined || whole === undefined || rest === undefined) return null
  const at = whole.length + places
  const digits = (whole + fraction).padEnd(at, '0')
  const padded = at <= 0 ? '0'.repeat(1 - at) + digits : digits
  const point = Math.max(at, 1)
  const left = padded.slice(0, point).replace(/^0+(?=\d)/, '')
  const right = padded.slice(point)
  return `${sign}${left}${right === '' ? '' : `.${right}`}${rest}`
}
