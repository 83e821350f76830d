import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const hoursAboveDay: ReviewRule = {
  id: 'hours-above-day',
  severity: 'error',
  reason: 'A day has 24 hours.',
  source: 'arithmetic',

  check({ system }) {
    const { loads, other_sources: sources, inverter } = system
    return [...loads, ...sources, inverter].flatMap(({ hours }) =>
      hours && hours.value > 86_400
        ? [{ message: `${said(hours)} a day are more than 24 hours`, suspects: [hours] as const }]
        : [],
    )
  },
}
