import { short } from '../../rules/band.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const weightLimitExceeded: ReviewRule = {
  id: 'weight-limit-exceeded',
  severity: 'warning',
  reason: 'The customer set this limit; weight aloft takes stability, and a roof has a permitted load.',
  source: 'the customer’s limit',

  check({ system }, { arrays }) {
    const limit = system.limits.weight
    const known = arrays.flatMap(({ weight_kg: weight }) => (weight === null ? [] : [weight]))
    const total = known.reduce((all, weight) => all + weight, 0)
    if (!limit || total <= limit.value) return null
    return {
      message: `Panels and frames weigh ${short(total)} kg, ${short(total - limit.value)} kg more than the limit of ${said(limit)}`,
      suspects: [limit],
    }
  },
}
