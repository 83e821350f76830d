import type { PanelRule } from '../about.ts'
import { daysBetween } from '../../records/dates.ts'

export const priceStale: PanelRule = {
  id: 'price-stale',
  severity: 'information',
  reason: 'Prices move; one older than a year misleads a customer.',
  source: 'common practice, no source',

  check({ price: { amount, quoted_on: date } }, { today }) {
    const age = date && daysBetween(date.text, today)
    if (!amount || !date || age === undefined || age <= 365) return null
    return {
      message: `The price ${amount.text} was quoted on ${date.text}, more than a year ago`,
      suspects: [date, amount],
    }
  },
}
