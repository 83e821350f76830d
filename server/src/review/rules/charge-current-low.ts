import { short } from '../../rules/band.ts'
import { bankOf } from '../bank.ts'
import type { ReviewRule } from '../rule.ts'

export const chargeCurrentLow: ReviewRule = {
  id: 'charge-current-low',
  severity: 'information',
  reason: 'Lead-acid needs a good current now and then, or its acid settles and its plates sulphate.',
  source: 'common practice, no source',

  check(system, { battery: { charge_rate_c: rate } }) {
    const bank = bankOf(system)
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || bank.lithium || rate === null || rate >= 0.03 || !place) return null
    return {
      message: `All sources together give ${short(rate * bank.amperehours)} A, ${short(100 * rate)} % of ${short(bank.amperehours)} Ah; lead-acid should get 5 % to 10 %`,
      suspects: [place],
    }
  },
}
