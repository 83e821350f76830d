import { panelRule } from '../about.ts'
import { daysBetween } from '../../records/dates.ts'

export const dateInFuture = panelRule({
  id: 'date-in-future',
  severity: 'warning',
  reason: 'A date that has not come yet is mistyped.',
  source: 'calendar',
  messages: {
    found: 'The date {date} is in the future',
  },

  check({ price: { quoted_on: quoted }, datasheet: { typed_on: typed } }, { today }) {
    return [quoted, typed].flatMap((date) => {
      const ahead = date && daysBetween(today, date.text)
      return date && ahead !== undefined && ahead > 1
        ? [{ say: 'found', with: { date }, suspects: [date] as const }]
        : []
    })
  },
})
