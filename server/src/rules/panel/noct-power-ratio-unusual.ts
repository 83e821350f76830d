import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { inside } from '../band.ts'
import { offBy } from '../words.ts'

export const noctPowerRatioUnusual = panelRule({
  id: 'noct-power-ratio-unusual',
  severity: 'warning',
  reason:
    'Power at NOCT follows from Pmax, its coefficient and the temperature; else one of them is from another row or model.',
  source:
    'linear translation, IEC 60891 (from memory); open module ratings of a public list, 2015 to 2022: 0.907 to 1.133 of it',
  messages: {
    unusual: 'Pmax at NOCT {noctPmax} is {ratio} the {expected} that Pmax {pmax} and its coefficient lead to',
  },

  check({ stc, noct, temperature_coefficients }) {
    const { pmax } = stc
    const gamma = relative(temperature_coefficients.pmax, pmax) ?? -0.004
    if (!pmax || !noct.pmax || pmax.value <= 0 || noct.pmax.value >= pmax.value) return null
    const expected = 0.8 * pmax.value * (1 + gamma * ((noct.temperature?.value ?? 45) - 25))
    const ratio = noct.pmax.value / expected
    if (inside(ratio, [0.87, 1.17])) return null
    return {
      say: 'unusual',
      with: { noctPmax: noct.pmax, ratio: offBy(ratio), expected: figure(expected, 'W'), pmax },
      suspects: [noct.pmax, pmax],
    }
  },
})
