import { figure } from '../../findings/message.ts'
import { monthDays } from '../../physics/sun.ts'
import { bankOf } from '../bank.ts'
import { monthsInWords } from '../months-in-words.ts'
import { reviewRule } from '../rule.ts'

export const batteryRunsEmpty = reviewRule({
  id: 'battery-runs-empty',
  severity: 'warning',
  reason: 'At its floor the battery is cut off and the loads stand still; often there, it also ages fast.',
  source: 'hour-by-hour year around the monthly means, after Aguiar, Collares-Pereira and Conde (1988)',
  messages: {
    inAUsual:
      'In a usual year the battery runs down to its floor of {share} in {names}; {energy}, {share2} of the loads, are not met',
    lithium: 'lithium',
    leadAcid: 'lead-acid',
    inAUsual2: 'In a usual year the battery falls to {share}, below the {value} % that {part} should keep',
  },

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
        say: 'inAUsual',
        with: {
          share: figure(100 * (1 - bank.depth), '%'),
          names,
          energy: figure(unserved / 1000, 'kWh'),
          share2: figure((100 * unserved) / load, '%'),
        },
        suspects: [place],
      }
    }
    const limit = bank.lithium ? 0.3 : 0.5
    const low = months.reduce((a, m) => Math.min(a, m.lowest_soc ?? 1), 1)
    if (limit <= low) return null
    return {
      say: 'inAUsual2',
      with: {
        share: figure(100 * low, '%'),
        value: 100 * limit,
        part: bank.lithium ? { say: 'lithium' } : { say: 'leadAcid' },
      },
      suspects: [place],
      severity: 'information',
    }
  },
})
