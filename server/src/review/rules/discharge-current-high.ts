import { short } from '../../rules/band.ts'
import { loadCurrent, partsInWords } from '../bank-current.ts'
import { bankOf } from '../bank.ts'
import { elsewhere } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const dischargeCurrentHigh: ReviewRule = {
  id: 'discharge-current-high',
  severity: 'warning',
  reason: 'Above what a battery may give, its management switches it off in the middle of use, or it gets hot.',
  source: 'the maker’s limit',

  check(system) {
    const bank = bankOf(system)
    const limit = system.battery?.record.discharge.max_current
    const place = system.system.battery.in_parallel ?? system.system.battery.battery.id
    if (!bank || !limit || !place) return null
    const { amps: current, parts } = loadCurrent(system, bank)
    if (current <= bank.mostOut) return null
    const parallel = Math.max(1, system.system.battery.in_parallel?.value ?? 1)
    return {
      message: `All loads together take ${short(current)} A at ${short(bank.lowest)} V (${partsInWords(parts)}), more than the ${short(bank.mostOut)} A that the bank gives; ${Math.ceil((current / bank.mostOut) * parallel)} in parallel would give it`,
      suspects: [place],
      ...elsewhere(system.battery, limit),
    }
  },
}
