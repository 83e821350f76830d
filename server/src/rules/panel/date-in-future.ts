import { panelRule } from '../about.ts'
import { daysBetween } from '../../records/dates.ts'

export const dateInFuture = panelRule({
  id: 'date-in-future',
  severity: 'warning',
  reason: 'A date that has not come yet is mistyped.',
  source: 'calendar',
  messages: {
    found: 'The date {date} is in the future',
    exchanged: 'month and day exchanged',
  },

  check({ price: { quoted_on: quoted }, datasheet: { typed_on: typed } }, { today }) {
    return [quoted, typed].flatMap((date) => {
      const ahead = date && daysBetween(today, date.text)
      if (!date || ahead === undefined || ahead <= 1) return []
      const text = date.text.replace(/^(\d{4})-(\d\d)-(\d\d)$/, '$1-$3-$2')
      const isPast = (daysBetween(today, text) ?? 1) <= 0
      const correction = isPast && {
        correction: { field: date, text, why: { say: 'exchanged' } as const, certainty: 'guess' as const },
      }
      return [{ say: 'found' as const, with: { date }, ...correction, suspects: [date] as const }]
    })
  },
})
