import { short } from '../../rules/band.ts'
import { throughBattery } from '../bank.ts'
import { allowable, ampacitySource, inside } from '../cable-figures.ts'
import { nextBatteryCable } from '../next-cable.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const batteryCableThin: ReviewRule = {
  id: 'battery-cable-thin',
  severity: 'error',
  reason: 'A cable that carries more than it is made for gets hot and starts a fire.',
  source: ampacitySource,

  check(system) {
    const own = system.system.battery.cable
    const iz = own.size ? allowable(own, own.size.value, inside) : null
    const current = throughBattery(system)
    if (!own.size || iz === null || current === null || current <= iz) return null
    const correction = nextBatteryCable(system, Math.max(current, system.system.battery.fuse?.value ?? 0))
    return {
      message: `Up to ${short(current)} A flow to or from the battery, and ${said(own.size)} with ${said(own.insulation)} insulation may carry ${short(iz)} A as a guide value`,
      suspects: [own.size],
      ...(correction && { correction }),
    }
  },
}
