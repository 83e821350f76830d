import { short } from '../../rules/band.ts'
import { allChargeCurrent, allLoadCurrent, bankOf } from '../bank.ts'
import { allowable, ampacitySource, inside } from '../cable-figures.ts'
import { nextCable } from '../next-cable.ts'
import type { ReviewRule } from '../rule.ts'

export const batteryCableThin: ReviewRule = {
  id: 'battery-cable-thin',
  severity: 'error',
  reason: 'A cable that carries more than it is made for gets hot and starts a fire.',
  source: ampacitySource,

  check(system) {
    const bank = bankOf(system)
    const own = system.system.battery.cable
    const iz = own.size ? allowable(own, own.size.value, inside) : null
    if (!bank || !own.size || iz === null) return null
    const current = Math.max(allChargeCurrent(system, bank), allLoadCurrent(system, bank))
    if (current <= iz) return null
    const correction = nextCable(own, (size) => {
      const next = allowable(own, size, inside) ?? 0
      return current <= next ? `${short(next)} A` : null
    })
    return {
      message: `Up to ${short(current)} A flow to or from the battery, and ${own.size.text} with ${own.insulation?.text} insulation may carry ${short(iz)} A as a guide value`,
      suspects: [own.size],
      ...(correction && { correction }),
    }
  },
}
