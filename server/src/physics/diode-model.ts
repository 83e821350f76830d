import { boltzmannVolt, stcIrradiance, stcKelvin, zeroCelsius } from './constants.ts'
import type { Diode } from './single-diode.ts'

/** A module's diode at standard test conditions, and how it changes with temperature. */
export interface DiodeModel extends Diode {
  /** Slope of the light current with temperature [A/K]. */
  readonly ilSlope: number
  /** Band gap in the law of the saturation current [eV]; 1.121 for silicon by the book, here what meets the slope of Voc. */
  readonly gap: number
  /** Relative slope of the series resistance [1/K]. */
  readonly rsSlope: number
  /** What of the wished coefficient of Pmax is not met [1/K]; 0 as a rule. */
  readonly gammaResidual: number
}

/** Relative slope of the band gap, its sign turned [1/K]. @source De Soto, Klein, Beckman, Solar Energy 80 (2006) 78-88, for silicon */
export const gapSlope = 0.0002677

/**
 * The diode at another irradiance and cell temperature.
 *
 *     il = G/1000 (il0 + slope dT), i0 = i00 (T/T0)^3 exp(Eg0/(k T0) - Eg/(k T)), Eg = Eg0 (1 - 0.0002677 dT),
 *     a = a0 T/T0, rsh = rsh0 1000/G, rs = rs0 (1 + slope dT) but at least a quarter of rs0
 *
 * Holds for crystalline silicon from about 100 W/m2, cells from -40 to 90 °C.
 *
 * @param m            model at standard test conditions
 * @param irradiance   G [W/m2]; 0 or less is dark
 * @param temperature  of the cell [°C]
 * @param into         written over, where thousands of hours are worked out
 * @returns            the five parameters there; il is never negative
 * @source W. De Soto, S. A. Klein, W. A. Beckman, Solar Energy 80 (2006) 78-88; slope of rs: own
 */
export function diodeAt(
  m: DiodeModel,
  irradiance: number,
  temperature: number,
  into: Writable<Diode> = emptyDiode(),
): Diode {
  const t = temperature + zeroCelsius
  const dT = t - stcKelvin
  const sun = Math.max(irradiance, 0) / stcIrradiance
  const warmer = t / stcKelvin
  const exponent = (m.gap / boltzmannVolt) * (1 / stcKelvin - (1 - gapSlope * dT) / t)
  into.il = Math.max(sun * (m.il + m.ilSlope * dT), 0)
  into.i0 = Math.max(m.i0 * (warmer * warmer * warmer) * Math.exp(exponent), 1e-300)
  into.rs = m.rs * Math.max(1 + m.rsSlope * dT, 0.25)
  into.rsh = m.rsh / sun
  into.a = m.a * warmer
  return into
}

type Writable<T> = { -readonly [K in keyof T]: T[K] }

/** To be written over. Not zeros, which the machine would keep as integers until the first fraction. */
export const emptyDiode = (): Diode => ({ il: NaN, i0: NaN, rs: NaN, rsh: NaN, a: NaN })
