import type { Climate } from '../../records/records.generated.ts'
import { byMonth, monthNames } from '../../values/months.ts'
import type { Rule } from '../rule.ts'

export const highBelowLow: Rule<Climate> = {
  id: 'high-below-low',
  severity: 'warning',
  reason: 'The mean of the daily highs lies above that of the lows.',
  source: 'definition',

  check({ air: { mean_low: lows, mean_high: highs } }) {
    const low = byMonth(lows)
    return [...byMonth(highs)].flatMap(([month, high]) => {
      const other = low.get(month)
      if (!other || other.value <= high.value) return []
      return [
        {
          message: `The mean high of ${monthNames[month - 1]}, ${high.text}, is below its mean low, ${other.text}`,
          suspects: [high, other] as const,
        },
      ]
    })
  },
}
