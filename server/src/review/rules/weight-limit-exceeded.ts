import { figure } from '../../findings/message.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'
import { knownWeight } from '../strings.ts'

export const weightLimitExceeded = reviewRule({
  id: 'weight-limit-exceeded',
  severity: 'warning',
  reason: 'The customer set this limit; weight aloft takes stability, and a roof has a permitted load.',
  source: 'the customer’s limit',
  messages: {
    exceeded: 'Panels and frames weigh {total}, {weight} more than the limit of {limit}',
  },

  check({ system, arrays }) {
    const limit = system.limits.weight
    const total = limit ? knownWeight(arrays) : 0
    if (!limit || total <= limit.value) return null
    return {
      say: 'exceeded',
      with: { total: figure(total, 'kg'), weight: figure(total - limit.value, 'kg'), limit: said(limit) },
      suspects: [limit],
    }
  },
})
