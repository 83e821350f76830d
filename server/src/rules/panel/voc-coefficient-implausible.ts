import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { isCrystalline } from '../../values/technology.ts'
import { asPercent, percentPerDegree } from '../words.ts'

export const vocCoefficientImplausible = panelRule({
  id: 'voc-coefficient-implausible',
  severity: 'warning',
  reason:
    'The Voc coefficient decides the voltage of the coldest morning; a wrong unit hides a voltage that destroys a controller.',
  source:
    'open module ratings of a public list, 2015 to 2022: crystalline -0.48 to -0.18 %/°C, thin film -0.53 to -0.17 %/°C, widened',
  messages: {
    implausible: 'The Voc coefficient {voc}{voc2} is outside {low} to {high}',
  },

  check(panel) {
    const { voc } = panel.temperature_coefficients
    const value = relative(voc, panel.stc.voc)
    if (!voc || value === undefined || value > 0) return null
    const [low, high] = isCrystalline(panel) ? [-0.0055, -0.0016] : [-0.006, -0.0009]
    if (low <= value && value <= high) return null
    const severity = value < -0.01 || value > -0.0005 ? 'error' : 'warning'
    return {
      say: 'implausible',
      with: { voc, voc2: asPercent(voc, value), low: percentPerDegree(low), high: percentPerDegree(high) },
      suspects: [voc],
      severity,
    }
  },
})
