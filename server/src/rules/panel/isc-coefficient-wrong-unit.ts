import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { isCrystalline } from '../../values/technology.ts'

export const iscCoefficientWrongUnit = panelRule({
  id: 'isc-coefficient-wrong-unit',
  severity: 'information',
  reason:
    'Sheets print this coefficient in A/°C, mA/°C or %/°C; a very small percentage is often an A/°C typed as percent.',
  source: 'open module ratings of a public list, 2015 to 2022: 95 % of crystalline rows are above 0.02 %/°C',
  messages: {
    found: 'The Isc coefficient {isc} is very small for silicon; check whether the sheet prints A/°C',
  },

  check(panel) {
    const { isc } = panel.temperature_coefficients
    const value = relative(isc, panel.stc.isc)
    if (!isc || value === undefined || !isCrystalline(panel) || isc.quantity.dimension !== 'per-kelvin') return null
    if (Math.abs(value) >= 0.0001) return null
    return {
      say: 'found',
      with: { isc },
      suspects: [isc],
    }
  },
})
