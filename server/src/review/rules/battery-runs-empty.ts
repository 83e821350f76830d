import { short } from '../../rules/band.ts'
import { monthDays } from '../../physics/sun.ts'
import { bankOf } from '../bank.ts'
import { monthsInWords } from '../months-in-words.ts'
import type { ReviewRule } from '../rule.ts'

export const batteryRunsEmpty: ReviewRule = {
  id: 'battery-runs-empty',
  severity: 'warning',
  reason: 'At its floor the battery is cut off and the loads stand still; often there, it also ages fast.',
  source: 'hour-by-hour year around the monthly means, after Aguiar, Collares-Pereira and Conde (1988)',

  check(system, { months }) {
    const bank = bankOf(system)
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || !place) return null
    const empty = months.filter(({ lowest_soc: soc }) => soc !== null && soc <= 1 - bank.depth + 1e-6)
    if (empty.length > 0) {
      const unserved = months.reduce((sum, m) => sum + (m.unserved_wh_day ?? 0) * monthDays[m.month - 1]!, 0)
      const load = months.reduce((sum, m) => sum + m.load_wh_day * monthDays[m.month - 1]!, 0)
      const names = monthsInWords(empty.map(({ month }) => month))
      return {
        message: `In a usual year the battery runs down to its floor of ${short(100 * (1 - bank.depth))} % in ${names}; ${short(unserved / 1000)} kWh, ${short((100 * unserved) / load)} % of the loads, are not met`,
        suspects: [place],
      }
    }
    const limit = bank.lithium ? 0.3 : 0.5
    const low = months.reduce((a, m) => Math.min(a, m.lowest_soc ?? 1), 1)
    if (limit <= low) return null
    return {
      message: `In a usual year the battery falls to ${short(100 * low)} %, below the ${100 * limit} % that ${bank.lithium ? 'lithium' : 'lead-acid'} should keep`,
      suspects: [place],
      severity: 'information',
    }
  },
}
