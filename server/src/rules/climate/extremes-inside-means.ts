import type { Measure } from '../../records/field.ts'
import { climateRule } from '../over.ts'

export const extremesInsideMeans = climateRule({
  id: 'extremes-inside-means',
  severity: 'warning',
  reason: 'The extreme of many years is beyond the mean of every month.',
  source: 'definition of an extreme',
  messages: {
    coldest: 'The coldest air {coldest} is above a mean daily low of {low}',
    hottest: 'The hottest air {hottest} is below a mean daily high of {high}',
  },

  check({ air: { coldest, hottest, mean_low: lows, mean_high: highs } }) {
    const low = lows.reduce<Measure | undefined>((a, b) => (!a || b.value < a.value ? b : a), undefined)
    const high = highs.reduce<Measure | undefined>((a, b) => (!a || a.value < b.value ? b : a), undefined)
    return [
      ...(coldest && low && low.value < coldest.value
        ? [{ say: 'coldest', with: { coldest, low }, suspects: [coldest, low] } as const]
        : []),
      ...(hottest && high && hottest.value < high.value
        ? [{ say: 'hottest', with: { hottest, high }, suspects: [hottest, high] } as const]
        : []),
    ]
  },
})
