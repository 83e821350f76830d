/** Which units a reader is used to. Sizes of cables stay as typed: nobody sells the other unit's number. */
export type Units = 'metric' | 'us'

/** A number in the unit beside it. */
export interface InUnit {
  readonly value: number
  readonly unit: string
}

/**
 * A quantity in the unit that a reader is used to; what the trade gives in SI units everywhere, such as sun on a surface, stays.
 *
 * @param value  in `unit`
 * @source factors: NIST Special Publication 811, appendix B.8
 */
export function inUsual(value: number, unit: string, units: Units): InUnit {
  const other = units === 'us' ? us[unit] : undefined
  return other ? { value: value * other.times + (other.plus ?? 0), unit: other.unit } : { value, unit }
}

const pound = 0.45359237
const foot = 0.3048

const us: Readonly<
  Record<string, { readonly unit: string; readonly times: number; readonly plus?: number } | undefined>
> = {
  m: { unit: 'ft', times: 1 / foot },
  cm: { unit: 'in', times: 1 / 2.54 },
  mm: { unit: 'in', times: 1 / 25.4 },
  m2: { unit: 'ft2', times: 1 / foot ** 2 },
  kg: { unit: 'lb', times: 1 / pound },
  'kg/m2': { unit: 'lb/ft2', times: foot ** 2 / pound },
  'W/kg': { unit: 'W/lb', times: pound },
  'Wh/kg': { unit: 'Wh/lb', times: pound },
  degC: { unit: '°F', times: 1.8, plus: 32 },
  '°C': { unit: '°F', times: 1.8, plus: 32 },
}
