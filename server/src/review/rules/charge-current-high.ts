import { figure } from '../../findings/message.ts'
import { allChargeCurrent, bankOf } from '../bank.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const chargeCurrentHigh = reviewRule({
  id: 'charge-current-high',
  severity: 'warning',
  reason:
    'Charged faster than it is made for, a battery gets hot; lithium may be switched off by its own management, or burn without one.',
  source: 'the maker’s limit, or the trade value of its chemistry (from memory)',
  messages: {
    byItsChemistry: ', by its chemistry',
    high: 'All sources together charge with {current}, more than the {mostIn} that the bank takes{part}; {enough} in parallel would take it, or limit the chargers',
  },

  check(system) {
    const bank = bankOf(system)
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || !place) return null
    const current = allChargeCurrent(system, bank)
    if (current <= bank.mostIn) return null
    const parallel = Math.max(1, system.system.battery.in_parallel?.value ?? 1)
    const enough = Math.ceil((current / bank.mostIn) * parallel)
    const limit = system.battery?.record.charge.max_current
    return {
      say: 'high',
      with: {
        current: figure(current, 'A'),
        mostIn: figure(bank.mostIn, 'A'),
        part: limit ? null : { say: 'byItsChemistry' },
        enough,
      },
      suspects: [place],
      severity: bank.lithium && !limit ? 'error' : 'warning',
      ...elsewhere(system.battery, limit),
    }
  },
})
