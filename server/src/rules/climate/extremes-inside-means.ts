import type { Climate } from '../../records/records.generated.ts'
import type { Measure } from '../../records/field.ts'
import type { Doubt, Rule } from '../rule.ts'

export const extremesInsideMeans: Rule<Climate> = {
  id: 'extremes-inside-means',
  severity: 'warning',
  reason: 'The extreme of many years lies beyond the mean of every month.',
  source: 'definition of an extreme',

  check({ air: { coldest, hottest, mean_low: lows, mean_high: highs } }) {
    const doubts: Doubt[] = []
    const low = lows.reduce<Measure | undefined>((a, b) => (!a || b.value < a.value ? b : a), undefined)
    const high = highs.reduce<Measure | undefined>((a, b) => (!a || a.value < b.value ? b : a), undefined)
    if (coldest && low && low.value < coldest.value)
      doubts.push({
        message: `The coldest air ${coldest.text} is above a mean daily low of ${low.text}`,
        suspects: [coldest, low],
      })
    if (hottest && high && hottest.value < high.value)
      doubts.push({
        message: `The hottest air ${hottest.text} is below a mean daily high of ${high.text}`,
        suspects: [hottest, high],
      })
    return doubts
  },
}
