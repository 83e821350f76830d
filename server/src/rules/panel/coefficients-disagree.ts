import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'
import { percentPerDegree } from '../words.ts'

export const coefficientsDisagree = panelRule({
  id: 'coefficients-disagree',
  severity: 'information',
  reason:
    'The Pmax coefficient is that of Isc and Voc together plus a little for the fill factor; else one of the three is doubtful.',
  source:
    'open module ratings of a public list, 2015 to 2022: Pmax coefficient minus the two others is -0.265 to -0.068 %/°C in 98 % of crystalline rows',
  messages: {
    disagree:
      'The coefficients of Pmax {pmax}, Voc {voc} and Isc {isc} leave {rest} for the fill factor, where -0.29 to -0.04 %/°C is usual',
  },

  check(panel) {
    const { pmax, voc, isc } = panel.temperature_coefficients
    const gamma = relative(pmax, panel.stc.pmax)
    const beta = relative(voc, panel.stc.voc)
    const alpha = relative(isc, panel.stc.isc)
    if (
      !pmax ||
      !voc ||
      !isc ||
      gamma === undefined ||
      beta === undefined ||
      alpha === undefined ||
      !isCrystalline(panel)
    )
      return null
    const rest = gamma - (alpha + beta)
    if (inside(rest, [-0.0029, -0.0004])) return null
    return {
      say: 'disagree',
      with: { pmax, voc, isc, rest: percentPerDegree(rest) },
      suspects: [pmax, voc, isc],
    }
  },
})
