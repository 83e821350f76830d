import { byMonth } from '../../values/months.ts'
import { monthName } from '../../findings/months.ts'
import { climateRule } from '../over.ts'

export const highBelowLow = climateRule({
  id: 'high-below-low',
  severity: 'warning',
  reason: 'The mean of the daily highs is above that of the lows.',
  source: 'definition',
  messages: {
    low: 'The mean high of {month}, {high}, is below its mean low, {low}',
  },

  check({ air: { mean_low: lows, mean_high: highs } }) {
    const low = byMonth(lows)
    return [...byMonth(highs)].flatMap(([month, high]) => {
      const other = low.get(month)
      if (!other || other.value <= high.value) return []
      return [
        {
          say: 'low',
          with: { month: monthName(month), high, low: other },
          suspects: [high, other] as const,
        },
      ]
    })
  },
})
