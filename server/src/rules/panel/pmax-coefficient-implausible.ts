import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { isCrystalline } from '../../values/technology.ts'
import { asPercent, percentPerDegree } from '../words.ts'

export const pmaxCoefficientImplausible = panelRule({
  id: 'pmax-coefficient-implausible',
  severity: 'warning',
  reason: 'The Pmax coefficient decides how much a hot, glued-down panel really gives; a wrong unit moves it tenfold.',
  source:
    'open module ratings of a public list, 2015 to 2022: crystalline -0.66 to -0.22 %/°C, thin film -0.52 to -0.16 %/°C, widened',
  messages: {
    implausible: 'The Pmax coefficient {pmax}{pmax2} is outside {low} to {high}',
  },

  check(panel) {
    const { pmax } = panel.temperature_coefficients
    const value = relative(pmax, panel.stc.pmax)
    if (!pmax || value === undefined || value > 0) return null
    const [low, high] = isCrystalline(panel) ? [-0.0072, -0.002] : [-0.0072, -0.0008]
    if (low <= value && value <= high) return null
    const severity = value < -0.012 || value > -0.0005 ? 'error' : 'warning'
    return {
      say: 'implausible',
      with: { pmax, pmax2: asPercent(pmax, value), low: percentPerDegree(low), high: percentPerDegree(high) },
      suspects: [pmax],
      severity,
    }
  },
})
