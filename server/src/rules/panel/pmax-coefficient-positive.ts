import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { negated } from '../negated.ts'

export const pmaxCoefficientPositive = panelRule({
  id: 'pmax-coefficient-positive',
  severity: 'error',
  reason:
    'Every solar cell loses power as it warms, so a coefficient without its minus sign promises power in the heat.',
  source: 'D. L. King et al., Photovoltaic Array Performance Model, SAND2004-3535; all 3 859 open ratings are negative',
  messages: {
    positive: 'The Pmax coefficient {pmax} is positive',
  },

  check({ temperature_coefficients: { pmax }, stc }) {
    const value = relative(pmax, stc.pmax)
    if (!pmax || value === undefined || value <= 0) return null
    return { say: 'positive', with: { pmax }, suspects: [pmax], correction: negated(pmax) }
  },
})
