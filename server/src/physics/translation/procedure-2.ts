import { stc, type Conditions, type CurvePoint } from './point.ts'

/** What procedure 2 needs to know of a device. */
export interface RelativeDevice {
  /** Open-circuit voltage at standard test conditions [V]. */
  readonly voc: number
  /** Relative coefficients of Isc and Voc [1/K]. */
  readonly alpha: number
  readonly beta: number
  /** How Voc falls with the logarithm of the irradiance, and with its square [1]. */
  readonly b1: number
  readonly b2: number
  /** Internal series resistance [ohm]. */
  readonly rs: number
  /** Curve correction factor [ohm/K]. */
  readonly kappa: number
}

/**
 * How many times Voc at 1000 W/m2 is as high as at another irradiance, at 25 °C.
 *
 *     f(G) = 1 + B1 ln(1000/G) + B2 ln(1000/G)^2
 *
 * @param irradiance  G [W/m2], above 0
 * @source IEC 60891:2021, procedure 2, as in IVcorrection 0.1.1 (LBNL)
 */
export function irradianceFactor({ b1, b2 }: Pick<RelativeDevice, 'b1' | 'b2'>, irradiance: number): number {
  const log = Math.log(stc.irradiance / irradiance)
  return 1 + b1 * log + b2 * log * log
}

/**
 * A point of a curve at other conditions, by procedure 2 of IEC 60891, with relative coefficients.
 *
 *     I2 = I1 (G2/G1) (1 + alpha (T2 - 25)) / (1 + alpha (T1 - 25))
 *     V2 = V1 - (Rs + kappa (T1 - 25)) (I2 - I1) - kappa I2 (T2 - T1)
 *          + Voc (beta (f(G2) (T2 - 25) - f(G1) (T1 - 25)) + 1/f(G2) - 1/f(G1))
 *
 * Holds for a wide range of irradiances where the shunt is good. At 25 °C and with small B1 it is the procedure of 2009,
 * whose a is B1.
 *
 * @param point   at the first conditions
 * @param from    first conditions
 * @param to      second conditions
 * @param device  see `RelativeDevice`
 * @returns       the point at the second conditions
 * @source IEC 60891:2021, procedure 2, as in IVcorrection 0.1.1 (LBNL); of 2009 in Sandia's PV_LIB for Matlab
 */
export function translate2(point: CurvePoint, from: Conditions, to: Conditions, device: RelativeDevice): CurvePoint {
  const { voc, alpha, beta, rs, kappa } = device
  const [t1, t2] = [from.temperature - stc.temperature, to.temperature - stc.temperature]
  const [f1, f2] = [irradianceFactor(device, from.irradiance), irradianceFactor(device, to.irradiance)]
  const i = (point.i * to.irradiance * (1 + alpha * t2)) / (from.irradiance * (1 + alpha * t1))
  const drop = (rs + kappa * t1) * (i - point.i) + kappa * i * (t2 - t1)
  return { i, v: point.v - drop + voc * (beta * (f2 * t2 - f1 * t1) + 1 / f2 - 1 / f1) }
}
