import { costOf } from '../cost.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const budgetExceeded: ReviewRule = {
  id: 'budget-exceeded',
  severity: 'warning',
  reason: 'The customer set this limit.',
  source: 'the customer’s limit',

  check(system) {
    const { budget } = system.system.limits
    if (!budget) return null
    const { unit } = budget.quantity
    const { amount } = costOf(system, unit)
    if (amount <= budget.value) return null
    return {
      message: `Panels, controllers and batteries cost ${Math.round(amount)} ${unit}, ${Math.round(amount - budget.value)} ${unit} more than the budget of ${said(budget)}`,
      suspects: [budget],
    }
  },
}
