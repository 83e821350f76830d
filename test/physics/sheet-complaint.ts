import { diodeAt } from '../../server/src/physics/diode-model.ts'
import { fitDiode, type Ratings } from '../../server/src/physics/fit-diode.ts'
import { curve, maxPower, openCircuit, type Diode } from '../../server/src/physics/single-diode.ts'
import { shortCircuit } from './models/short-circuit.ts'

/** What is wrong with the fit to a sheet, any sheet; null where nothing is. */
export function sheetComplaint(sheet: Ratings): string | null {
  const fit = fitDiode(sheet)
  if (!fit.ok) return fit.why.length > 10 && !/NaN|undefined/.test(fit.why) ? null : `no reason: ${fit.why}`
  const model = fit.params
  const unfit = Object.entries(model).find(([name, x]) => Number.isNaN(x) || (x === Infinity && name !== 'rsh'))
  if (unfit) return `${unfit[0]} is ${unfit[1]}`

  const stc = figures(diodeAt(model, 1000, 25))
  const off = [stc.pmax / sheet.pmax, stc.voc / sheet.voc, stc.isc / sheet.isc].find((x) => !(Math.abs(x - 1) < 1e-9))
  if (off !== undefined) return `test conditions are missed by a factor ${off}`

  const step = 0.01
  const up = figures(diodeAt(model, 1000, 25 + step))
  const down = figures(diodeAt(model, 1000, 25 - step))
  const slope = (key: keyof typeof stc) => (up[key] - down[key]) / (2 * step * stc[key])
  if (!(Math.abs(slope('isc') - sheet.alpha) < 1e-6)) return `alpha is ${slope('isc')}`
  if (!(Math.abs(slope('voc') - sheet.beta) < 1e-6)) return `beta is ${slope('voc')}`
  if (!(Math.abs(slope('pmax') + model.gammaResidual - sheet.gamma) < 1e-6)) return `gamma is ${slope('pmax')}`

  for (const irradiance of [0, 1, 50, 1400]) {
    for (const temperature of [-40, 25, 90]) {
      const there = diodeAt(model, irradiance, temperature)
      const { pmax, voc, isc } = figures(there)
      const place = `at ${irradiance} W/m2, ${temperature} °C`
      if (!(0 <= pmax && pmax <= voc * isc + 1e-12 && voc < 10 * sheet.voc))
        return `${pmax} W, ${voc} V, ${isc} A ${place}`
      const points = curve(there, 12)
      if (points.some(({ i }) => !Number.isFinite(i))) return `a current is not a number ${place}`
      if (points.some(({ i }, k) => k > 0 && i > points[k - 1]!.i + 1e-9 * isc + 1e-12 * (sheet.isc + there.i0)))
        return `the current rises with voltage ${place}`
    }
  }
  return null
}

const figures = (d: Diode) => ({ pmax: maxPower(d).p, voc: openCircuit(d), isc: shortCircuit(d) })
