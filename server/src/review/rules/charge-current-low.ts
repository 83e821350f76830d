import { estimate, figure } from '../../findings/message.ts'
import { bankOf } from '../bank.ts'
import { reviewRule } from '../rule.ts'

export const chargeCurrentLow = reviewRule({
  id: 'charge-current-low',
  severity: 'information',
  reason: 'Lead-acid needs a good current now and then, or its acid settles and its plates sulphate.',
  source: 'common practice, no source',
  messages: {
    low: 'All sources together give {current}, {share} of {amperehours}; lead-acid should get 5 % to 10 %',
  },

  check(system, { battery: { charge_rate_c: rate } }) {
    const bank = bankOf(system)
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || bank.lithium || rate === null || rate >= 0.03 || !place) return null
    return {
      say: 'low',
      with: {
        current: figure(rate * bank.amperehours, 'A'),
        share: estimate(100 * rate, '%'),
        amperehours: figure(bank.amperehours, 'Ah'),
      },
      suspects: [place],
    }
  },
})
