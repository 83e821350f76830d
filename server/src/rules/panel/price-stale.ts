import { panelRule } from '../about.ts'
import { daysBetween } from '../../records/dates.ts'

export const priceStale = panelRule({
  id: 'price-stale',
  severity: 'information',
  reason: 'Prices move; one older than a year misleads a customer.',
  source: 'common practice, no source',
  messages: {
    stale: 'The price {amount} was quoted on {date}, more than a year ago',
  },

  check({ price: { amount, quoted_on: date } }, { today }) {
    const age = date && daysBetween(date.text, today)
    if (!amount || !date || age === undefined || age <= 365) return null
    return {
      say: 'stale',
      with: { amount, date },
      suspects: [date, amount],
    }
  },
})
