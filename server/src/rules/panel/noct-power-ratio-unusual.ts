import type { PanelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { inside, short } from '../band.ts'
import { offBy } from '../words.ts'

export const noctPowerRatioUnusual: PanelRule = {
  id: 'noct-power-ratio-unusual',
  severity: 'warning',
  reason:
    'Power at NOCT follows from Pmax, its coefficient and the temperature; else one of them is from another row or model.',
  source:
    'linear translation, IEC 60891 (from memory); open module ratings of a public list, 2015 to 2022: 0.907 to 1.133 of it',

  check({ stc, noct, temperature_coefficients }) {
    const { pmax } = stc
    const gamma = relative(temperature_coefficients.pmax, pmax) ?? -0.004
    if (!pmax || !noct.pmax || pmax.value <= 0 || noct.pmax.value >= pmax.value) return null
    const expected = 0.8 * pmax.value * (1 + gamma * ((noct.temperature?.value ?? 45) - 25))
    const ratio = noct.pmax.value / expected
    if (inside(ratio, [0.87, 1.17])) return null
    return {
      message: `Pmax at NOCT ${noct.pmax.text} is ${offBy(ratio)} the ${short(expected)} W that Pmax ${pmax.text} and its coefficient lead to`,
      suspects: [noct.pmax, pmax],
    }
  },
}
