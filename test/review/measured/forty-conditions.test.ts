import { expect, test } from 'vitest'
import { diodeAt } from '../../../server/src/physics/diode-model.ts'
import { fitDiode } from '../../../server/src/physics/fit-diode.ts'
import { maxPower, openCircuit } from '../../../server/src/physics/single-diode.ts'
import { shortCircuit } from '../../physics/models/short-circuit.ts'
import { panelExpected } from '../../../server/src/review/measured/panel-expected.ts'
import { resolved } from '../resolved.ts'
import { sheets, type Sheet } from './synthetic.ts'

const conditions = [200, 400, 600, 800, 1000].flatMap((irradiance) =>
  [-5, 10, 25, 35, 45, 55, 65, 75].map((temperature) => ({ irradiance, temperature })),
)

function panelOf(sheet: Sheet) {
  const s = sheets[sheet]
  const { arrays } = resolved(`
arrays: [{ panels: [{ panel: {
  stc: { pmax: ${s.pmax} W, vmp: ${s.vmp} V, imp: ${s.imp} A, voc: ${s.voc} V, isc: ${s.isc} A },
  cells: { in_series: ${s.cells} },
  temperature_coefficients: { pmax: ${100 * s.gamma} %/°C, voc: ${100 * s.beta} %/°C, isc: ${100 * s.alpha} %/°C } }, count: 1 }] }]`)
  return arrays[0]!.panels[0]!.panel!.record
}

test.each(Object.keys(sheets) as Sheet[])(
  '%s: within 2 % of the single-diode model in forty conditions (De Soto, Klein, Beckman, Solar Energy 80, 2006)',
  (sheet) => {
    const fit = fitDiode(sheets[sheet])
    if (!fit.ok) throw new Error(fit.why)
    expect(conditions).toHaveLength(40)
    const off = conditions.map((at) => {
      const diode = diodeAt(fit.params, at.irradiance, at.temperature)
      const { voc, isc, vmp, imp } = panelExpected(panelOf(sheet), at)
      const shares = [voc! / openCircuit(diode), isc! / shortCircuit(diode), (vmp! * imp!) / maxPower(diode).p]
      return { ...at, worst: Math.max(...shares.map((share) => Math.abs(share - 1))) }
    })
    for (const { worst, ...at } of off) expect(worst, JSON.stringify(at)).toBeLessThan(0.02)
  },
)
