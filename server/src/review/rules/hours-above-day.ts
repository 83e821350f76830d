import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const hoursAboveDay = reviewRule({
  id: 'hours-above-day',
  severity: 'error',
  reason: 'A day has 24 hours.',
  source: 'arithmetic',
  messages: {
    found: '{hours} a day are more than 24 hours',
  },

  check({ system }) {
    const { loads, other_sources: sources, inverter } = system
    return [...loads, ...sources, inverter].flatMap(({ hours }) =>
      hours && hours.value > 86_400 ? [{ say: 'found', with: { hours: said(hours) }, suspects: [hours] as const }] : [],
    )
  },
})
