import { countOf } from '../strings.ts'
import type { ReviewRule } from '../rule.ts'

export const budgetLimit: ReviewRule = {
  id: 'budget-limit',
  severity: 'warning',
  reason: 'The customer set this limit.',
  source: 'the customer’s limit',

  check(system) {
    const { limits, battery } = system.system
    const bank = (battery.in_series?.value ?? 1) * (battery.in_parallel?.value ?? 1)
    const parts = [
      ...system.arrays.flatMap(({ panels }) =>
        panels.map((p) => ({ amount: p.panel?.record.price.amount, count: countOf(p) })),
      ),
      ...system.arrays.flatMap(({ controller }) =>
        controller ? [{ amount: controller.record.price.amount, count: 1 }] : [],
      ),
      ...(system.battery ? [{ amount: system.battery.record.price.amount, count: bank }] : []),
    ].filter(({ amount }) => amount?.quantity.unit === limits.budget?.quantity.unit)
    const cost = parts.reduce((sum, { amount, count }) => sum + (amount?.value ?? 0) * count, 0)
    if (!limits.budget || cost <= limits.budget.value) return null
    return {
      message: `Panels, controllers and batteries cost ${Math.round(cost)} ${limits.budget.quantity.unit}, more than the budget of ${limits.budget.text}`,
      suspects: [limits.budget],
    }
  },
}
