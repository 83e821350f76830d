import { bracketedRoot } from './root.ts'
import type { Diode } from './single-diode.ts'

/** The four numbers at standard test conditions that a curve must pass through. */
export interface Anchors {
  readonly vmp: number
  readonly imp: number
  readonly voc: number
  readonly isc: number
}

export type Solution = Diode

/**
 * The diode with a given `a` whose curve has this Isc, this Voc, and its maximum power at (Vmp, Imp).
 *
 * With rs fixed the three points are linear in il, i0 and 1/rsh; that dP/dV is 0 at the third is one equation in rs.
 * Exponentials are taken relative to open circuit, so they never overflow.
 *
 * @param anchors  within the limits of a concave curve: Vmp/Voc and Imp/Isc between 0.5 and 1
 * @param a        modified ideality [V]
 * @returns        the diode, or null where it would need a negative resistance, or a shunt below the series resistance
 * @source conditions: W. De Soto, S. A. Klein, W. A. Beckman, Solar Energy 80 (2006) 78-88; their reduction to one: own
 */
export function solveAtIdeality({ vmp, imp, voc, isc }: Anchors, a: number): Solution | null {
  const highest = (voc - vmp) / imp
  const knee = isc * vmp - (isc - imp) * voc
  const residual = (rs: number) => {
    const em = Math.exp((vmp + imp * rs - voc) / a)
    const es = Math.exp((isc * rs - voc) / a)
    const det = (1 - es) * (vmp - (isc - imp) * rs) - (em - es) * (voc - isc * rs)
    const shunt = (1 - es) * (isc - imp) - (em - es) * isc
    return imp * det - (vmp - imp * rs) * ((knee * em) / a + shunt)
  }
  const atZero = residual(0)
  if (!(atZero > 0)) return null
  const atHighest = residual(highest)
  if (!(atHighest < 0)) return null
  const rs = bracketedRoot(residual, 0, highest, atZero, atHighest)

  const em = Math.exp((vmp + imp * rs - voc) / a)
  const es = Math.exp((isc * rs - voc) / a)
  const det = (1 - es) * (vmp - (isc - imp) * rs) - (em - es) * (voc - isc * rs)
  const shunt = ((1 - es) * (isc - imp) - (em - es) * isc) / det
  const i0 = (knee / det) * Math.exp(-voc / a)
  if (!(shunt >= 0 && shunt * rs < 1 && i0 > 1e-250)) return null
  const il = isc + i0 * Math.expm1((isc * rs) / a) + isc * rs * shunt
  return { il, i0, rs, rsh: 1 / shunt, a }
}
