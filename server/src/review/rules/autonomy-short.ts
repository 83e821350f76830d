import { estimate } from '../../findings/message.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const autonomyShort = reviewRule({
  id: 'autonomy-short',
  severity: 'warning',
  reason: 'A few dull days in a row are usual in every season.',
  source: 'common practice, no source',
  messages: {
    wanted: 'you asked for {autonomy}',
    usual: 'at least 1 day is usual',
    oneDay: '1 day',
    days: '{days} days',
    short: 'The battery lasts {days}; {what}. {more} in parallel would do',
  },

  check(system, { battery: { autonomy_days: days } }) {
    const { autonomy, in_parallel: parallel, battery } = system.system.battery
    const place = autonomy ?? parallel ?? battery.id
    if (days === null || !place) return null
    const wanted = autonomy ? autonomy.value / 86_400 : system.system.other_sources.length > 0 ? 0 : 1
    // loads are not known to a hundredth, and the page says tenths of a day
    if (wanted <= Number(days.toFixed(1))) return null
    const more = Math.ceil((wanted / days) * Math.max(1, parallel?.value ?? 1))
    return {
      say: 'short',
      with: {
        days: days.toPrecision(2) === '1.0' ? { say: 'oneDay' } : { say: 'days', with: { days: estimate(days) } },
        what: autonomy ? { say: 'wanted', with: { autonomy: said(autonomy) } } : { say: 'usual' },
        more,
      },
      suspects: [place],
    }
  },
})
