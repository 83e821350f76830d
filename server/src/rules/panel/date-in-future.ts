import type { PanelRule } from '../about.ts'
import { daysBetween } from '../../records/dates.ts'

export const dateInFuture: PanelRule = {
  id: 'date-in-future',
  severity: 'warning',
  reason: 'A date that has not come yet is mistyped.',
  source: 'calendar',

  check({ price: { quoted_on: quoted }, datasheet: { typed_on: typed } }, { today }) {
    return [quoted, typed].flatMap((date) => {
      const ahead = date && daysBetween(today, date.text)
      return date && ahead !== undefined && ahead > 1
        ? [{ message: `The date ${date.text} lies in the future`, suspects: [date] as const }]
        : []
    })
  },
}
