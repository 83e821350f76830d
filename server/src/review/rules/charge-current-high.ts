import { short } from '../../rules/band.ts'
import { allChargeCurrent, bankOf } from '../bank.ts'
import { elsewhere } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const chargeCurrentHigh: ReviewRule = {
  id: 'charge-current-high',
  severity: 'warning',
  reason:
    'Charged faster than it is made for, a battery gets hot; lithium may be switched off by its own management, or burn without one.',
  source: 'the maker’s limit, or the trade value of its chemistry (from memory)',

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
      message: `All sources together charge with ${short(current)} A, more than the ${short(bank.mostIn)} A that the bank takes${limit ? '' : ', by its chemistry'}; ${enough} in parallel would take it, or limit the chargers`,
      suspects: [place],
      severity: bank.lithium && !limit ? 'error' : 'warning',
      ...elsewhere(system.battery, limit),
    }
  },
}
