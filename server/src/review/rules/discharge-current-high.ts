import { figure } from '../../findings/message.ts'
import { allLoadCurrent, bankOf } from '../bank.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const dischargeCurrentHigh = reviewRule({
  id: 'discharge-current-high',
  severity: 'warning',
  reason: 'Above what a battery may give, its management switches it off in the middle of use, or it gets hot.',
  source: 'the maker’s limit',
  messages: {
    high: 'All loads together take {current}, more than the {mostOut} that the bank gives; {value} in parallel would give it',
  },

  check(system) {
    const bank = bankOf(system)
    const limit = system.battery?.record.discharge.max_current
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || !limit || !place) return null
    const current = allLoadCurrent(system, bank)
    if (current <= bank.mostOut) return null
    const parallel = Math.max(1, system.system.battery.in_parallel?.value ?? 1)
    return {
      say: 'high',
      with: {
        current: figure(current, 'A'),
        mostOut: figure(bank.mostOut, 'A'),
        value: Math.ceil((current / bank.mostOut) * parallel),
      },
      suspects: [place],
      ...elsewhere(system.battery, limit),
    }
  },
})
