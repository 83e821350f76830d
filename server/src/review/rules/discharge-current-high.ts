import { figure } from '../../findings/message.ts'
import { loadCurrent } from '../bank-current.ts'
import { partsInWords } from '../current-in-words.ts'
import { bankOf } from '../bank.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const dischargeCurrentHigh = reviewRule({
  id: 'discharge-current-high',
  severity: 'warning',
  reason: 'Above what a battery may give, its management switches it off in the middle of use, or it gets hot.',
  source: 'the maker’s limit',
  messages: {
    high: 'All loads draw {current} at {lowest} ({parts}); the bank gives {mostOut}, {parallel} in parallel would give it',
  },

  check(system) {
    const bank = bankOf(system)
    const limit = system.battery?.record.discharge.max_current
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || !limit || !place) return null
    const { amps: current, parts } = loadCurrent(system, bank)
    if (current <= bank.mostOut) return null
    const parallel = Math.max(1, system.system.battery.in_parallel?.value ?? 1)
    return {
      say: 'high',
      with: {
        current: figure(current, 'A'),
        lowest: figure(bank.lowest, 'V'),
        parts: partsInWords(parts),
        mostOut: figure(bank.mostOut, 'A'),
        parallel: Math.ceil((current / bank.mostOut) * parallel),
      },
      suspects: [place],
      ...elsewhere(system.battery, limit),
    }
  },
})
