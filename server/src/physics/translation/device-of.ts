import { diodeAt, type DiodeModel } from '../diode-model.ts'
import type { Ratings } from '../fit-diode.ts'
import { maxPower, openCircuit } from '../single-diode.ts'
import { stc } from './point.ts'
import { irradianceFactor, type RelativeDevice } from './procedure-2.ts'

/** Share of Voc that it falls by an e-fold less sun, where no diode fits: ideality 1.2, 0.62 V a cell (from memory). */
const usualB1 = 0.05

/** Where the slope of power with irradiance and with temperature is met. */
const halfSun = 500
const weakSun = 200
const warm = 50

/**
 * The numbers that procedure 2 needs, from a datasheet. They are to be found by measuring the device in weak light and warm,
 * until the translated curves agree; here its single-diode model gives those curves, and the sheet's coefficient of Pmax the
 * power when warm.
 *
 * @param ratings  at standard test conditions, with relative coefficients
 * @param diode    the model that fits them; null where none does, which leaves Rs 0 and a usual B1
 * @returns        see `RelativeDevice`
 * @source way of finding them: IEC 60891:2021, after Sandia's pvl_est_Rs_IEC60891_2; the diode in place of curves: own
 */
export function deviceOf({ voc, imp, pmax, alpha, beta, gamma }: Ratings, diode: DiodeModel | null): RelativeDevice {
  const base = { voc, alpha, beta, ...irradianceTerms(diode) }
  const half = halfSun / stc.irradiance
  const fall = voc * (1 / irradianceFactor(base, halfSun) - 1)
  const rs = diode
    ? (maxPower(diodeAt(diode, halfSun, stc.temperature)).p / (half * imp) - pmax / imp - fall) / ((1 - half) * imp)
    : 0
  const warmer = warm - stc.temperature
  const current = imp * (1 + alpha * warmer)
  const voltage = pmax / imp - rs * (current - imp) + voc * beta * warmer
  const kappa = (voltage - (pmax * (1 + gamma * warmer)) / current) / (current * warmer)
  return { ...base, rs, kappa }
}

/** B1 and B2 that meet Voc of the diode at half and at a fifth of full sun. */
function irradianceTerms(diode: DiodeModel | null): Pick<RelativeDevice, 'b1' | 'b2'> {
  if (!diode) return { b1: usualB1, b2: 0 }
  const full = openCircuit(diodeAt(diode, stc.irradiance, stc.temperature))
  const [half, weak] = [halfSun, weakSun].map((irradiance) => {
    const log = Math.log(stc.irradiance / irradiance)
    return { log, slope: (full / openCircuit(diodeAt(diode, irradiance, stc.temperature)) - 1) / log }
  })
  const b2 = (weak!.slope - half!.slope) / (weak!.log - half!.log)
  return { b1: half!.slope - b2 * half!.log, b2 }
}
