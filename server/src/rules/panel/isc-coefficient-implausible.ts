import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { inside } from '../band.ts'
import { asPercent } from '../words.ts'

export const iscCoefficientImplausible = panelRule({
  id: 'isc-coefficient-implausible',
  severity: 'warning',
  reason: 'Isc changes little with temperature; a large coefficient is another unit or another row.',
  source: 'open module ratings of a public list, 2015 to 2022: -0.055 to 0.19 %/°C, widened',
  messages: {
    implausible: 'The Isc coefficient {isc}{isc2} is outside -0.1 to 0.25 %/°C',
  },

  check(panel) {
    const { isc } = panel.temperature_coefficients
    const value = relative(isc, panel.stc.isc)
    if (!isc || value === undefined || inside(value, [-0.001, 0.0025])) return null
    return {
      say: 'implausible',
      with: { isc, isc2: asPercent(isc, value) },
      suspects: [isc],
      severity: inside(value, [-0.005, 0.006]) ? 'warning' : 'error',
    }
  },
})
