import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { negated } from '../negated.ts'

export const vocCoefficientPositive = panelRule({
  id: 'voc-coefficient-positive',
  severity: 'error',
  reason:
    'Every solar cell loses voltage as it warms and gains it in the cold; without the minus sign the cold-day voltage comes out too low, which can destroy a controller.',
  source: 'D. L. King et al., Photovoltaic Array Performance Model, SAND2004-3535; all 4 020 open ratings are negative',
  messages: {
    positive: 'The Voc coefficient {voc} is positive',
  },

  check({ temperature_coefficients: { voc }, stc }) {
    const value = relative(voc, stc.voc)
    if (!voc || value === undefined || value <= 0) return null
    return { say: 'positive', with: { voc }, suspects: [voc], correction: negated(voc) }
  },
})
