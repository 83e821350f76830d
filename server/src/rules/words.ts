import { formatIn } from '../quantities/format.ts'

/** A share as people read it: 17.1 %. */
export const percent = (share: number): string => formatIn(share, '1')

/** A deviation from 1: `4.2 % above`. */
export function offBy(ratio: number): string {
  const by = Math.abs(ratio - 1)
  return by >= 1 ? `${Number(ratio.toPrecision(2))} times` : `${Number((100 * by).toPrecision(2))} % ${ratio > 1 ? 'above' : 'below'}`
}

/** A relative coefficient [1/K] as datasheets print it: -0.38 %/°C. */
export const percentPerDegree = (value: number): string => `${Number((100 * value).toPrecision(3))} %/°C`
