import { estimate } from '../../findings/message.ts'
import { demandOf, largestLoad, meanDemand } from '../loads.ts'
import { countOf } from '../strings.ts'
import { monthsInWords } from '../months-in-words.ts'
import { monthName } from '../../findings/months.ts'
import { reviewRule } from '../rule.ts'

export const monthInDeficit = reviewRule({
  id: 'month-in-deficit',
  severity: 'warning',
  reason: 'Month after month the battery cannot give what was not put in.',
  source: 'hour-by-hour year around the monthly means, after Aguiar, Collares-Pereira and Conde (1988)',
  messages: {
    s: 's',
    moreSuchPanel: '; {more} more such panel{part} would do',
    one: 'In {month} sun and other sources give {lacking} a day less than the loads take{would}',
    found: 'In {names} sun and other sources give less than the loads take, up to {lacking} a day in {month}{would}',
  },

  check(system, { months }) {
    const demand = demandOf(system)
    const poor = months.flatMap((figures) => {
      const { month, yield_wh_day: gives, load_wh_day: takes } = figures
      const lacking = takes - gives - meanDemand(demand, month).other
      return lacking > 1 ? [{ month, lacking, gives }] : []
    })
    if (poor.length === 0) return null
    const worst = poor.reduce((a, b) => (a.lacking < b.lacking ? b : a))
    const largest = largestLoad(system, worst.month)
    const place = largest?.name ?? largest?.power
    if (!place) return null
    const names = monthsInWords(poor.map(({ month }) => month))
    const panels = system.arrays.flatMap((array) => array.panels).reduce((sum, one) => sum + countOf(one), 0)
    const more = worst.gives > 0 ? Math.ceil((worst.lacking / worst.gives) * panels) : null
    const would =
      more !== null && more <= 2 * panels
        ? { say: 'moreSuchPanel', with: { more, part: more === 1 ? null : { say: 's' } } }
        : null
    const about = { lacking: estimate(worst.lacking, 'Wh'), month: monthName(worst.month), would }
    return poor.length === 1
      ? { say: 'one', with: about, suspects: [place] }
      : { say: 'found', with: { names, ...about }, suspects: [place] }
  },
})
