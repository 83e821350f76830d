import { listed } from '../listed.ts'
import { demandOf, meanDemand } from '../loads.ts'
import { monthNames } from '../../values/months.ts'
import type { ReviewRule } from '../rule.ts'

export const monthInDeficit: ReviewRule = {
  id: 'month-in-deficit',
  severity: 'warning',
  reason: 'Month after month the battery cannot give what was not put in.',
  source: 'hour-by-hour year around the monthly means, after Aguiar, Collares-Pereira and Conde (1988)',

  check(system, { months }) {
    const place = system.system.loads[0]?.name ?? system.system.loads[0]?.power
    if (!place) return null
    const demand = demandOf(system)
    const poor = months.flatMap(({ month, yield_wh_day: gives, load_wh_day: takes }) => {
      const lacking = takes - gives - meanDemand(demand, month).other
      return lacking > 1 ? [{ month, lacking }] : []
    })
    if (poor.length === 0) return null
    const worst = poor.reduce((a, b) => (a.lacking < b.lacking ? b : a))
    const names = poor.map(({ month }) => monthNames[month - 1]!)
    return {
      message: `${listed(names)}: the sun and other sources give less than the loads take, by up to ${Math.round(worst.lacking)} Wh a day in ${monthNames[worst.month - 1]}`,
      suspects: [place],
    }
  },
}
