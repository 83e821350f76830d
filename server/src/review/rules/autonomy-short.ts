import { estimate, figure } from '../../findings/message.ts'
import { heaviestDay } from '../battery-figures.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const autonomyShort = reviewRule({
  id: 'autonomy-short',
  severity: 'warning',
  reason: 'A few dull days in a row are usual in every season.',
  source: 'common practice, no source',
  messages: {
    day: '1 day',
    short:
      'The bank lasts {days} days at {energy} a day, where {part} is wanted; {value} Wh usable would do, which is {more} in parallel',
  },

  check(system, { battery: { autonomy_days: days, usable_wh: usable } }) {
    const { autonomy, in_parallel: parallel, battery } = system.system.battery
    const place = autonomy ?? parallel ?? battery.id
    if (days === null || usable === null || !place) return null
    const wanted = autonomy ? autonomy.value / 86_400 : system.system.other_sources.length > 0 ? 0 : 1
    // loads are not known to a hundredth, and the page says tenths of a day
    if (wanted <= Number(days.toFixed(1))) return null
    const more = Math.ceil((wanted / days) * Math.max(1, parallel?.value ?? 1))
    return {
      say: 'short',
      with: {
        days: estimate(days),
        energy: figure(heaviestDay(system), 'Wh'),
        part: autonomy ? said(autonomy) : { say: 'day' },
        value: upToTwoDigits((wanted / days) * usable),
        more,
      },
      suspects: [place],
    }
  },
})

/** Rounded up, so that it is enough. */
function upToTwoDigits(value: number): number {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(value)) - 1)
  return Math.ceil(value / step) * step
}
