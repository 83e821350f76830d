import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { negated } from '../negated.ts'

export const vmpCoefficientPositive = panelRule({
  id: 'vmp-coefficient-positive',
  severity: 'error',
  reason: 'Voltage falls as a panel warms, at full power even faster than with nothing connected.',
  source: 'D. L. King et al., Photovoltaic Array Performance Model, SAND2004-3535',
  messages: {
    positive: 'The Vmp coefficient {vmp} is positive',
  },

  check({ temperature_coefficients: { vmp }, stc }) {
    const value = relative(vmp, stc.vmp)
    if (!vmp || value === undefined || value <= 0) return null
    return { say: 'positive', with: { vmp }, suspects: [vmp], correction: negated(vmp) }
  },
})
