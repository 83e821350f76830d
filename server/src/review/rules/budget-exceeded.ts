import { whole } from '../../findings/message.ts'
import { costOf } from '../cost.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const budgetExceeded = reviewRule({
  id: 'budget-exceeded',
  severity: 'warning',
  reason: 'The customer set this limit.',
  source: 'the customer’s limit',
  messages: {
    exceeded: 'Panels, controllers and batteries cost {amount} {unit}, {value} {unit} more than the budget of {budget}',
  },

  check(system) {
    const { budget } = system.system.limits
    if (!budget) return null
    const { unit } = budget.quantity
    const { amount } = costOf(system, unit)
    if (amount <= budget.value) return null
    return {
      say: 'exceeded',
      with: { amount: whole(amount), unit, value: whole(amount - budget.value), budget: said(budget) },
      suspects: [budget],
    }
  },
})
