import type { Conditions, CurvePoint } from '../../../server/src/physics/translation/point.ts'

/** What procedure 1 needs to know of a device. */
export interface AbsoluteDevice {
  /** Short-circuit current at the first conditions [A]. */
  readonly isc: number
  /** Coefficients of Isc [A/K] and Voc [V/K]. */
  readonly alpha: number
  readonly beta: number
  /** Internal series resistance [ohm]. */
  readonly rs: number
  /** Curve correction factor [ohm/K]. */
  readonly kappa: number
}

/**
 * A point of a curve at other conditions, by procedure 1 of IEC 60891, with absolute coefficients.
 *
 *     I2 = I1 + Isc1 (G2/G1 - 1) + alpha (T2 - T1)
 *     V2 = V1 - Rs (I2 - I1) - kappa I2 (T2 - T1) + beta (T2 - T1)
 *
 * Holds for irradiances within 20 % of each other, as Voc stays what it is.
 *
 * @param point   at the first conditions
 * @param from    first conditions
 * @param to      second conditions
 * @param device  see `AbsoluteDevice`
 * @returns       the point at the second conditions
 * @source IEC 60891, procedure 1, as in Sandia's PV_LIB for Matlab, pvl_translate_IV_curve_IEC60891_1
 */
export function translate1(point: CurvePoint, from: Conditions, to: Conditions, device: AbsoluteDevice): CurvePoint {
  const { isc, alpha, beta, rs, kappa } = device
  const warmer = to.temperature - from.temperature
  const i = point.i + isc * (to.irradiance / from.irradiance - 1) + alpha * warmer
  return { i, v: point.v - rs * (i - point.i) - kappa * i * warmer + beta * warmer }
}
