import { figure } from '../../findings/message.ts'
import { throughBattery } from '../bank.ts'
import { allowable, ampacitySource, inside } from '../cable-figures.ts'
import { nextBatteryCable } from '../next-cable.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const batteryCableThin = reviewRule({
  id: 'battery-cable-thin',
  severity: 'error',
  reason: 'A cable that carries more than it is made for gets hot and starts a fire.',
  source: ampacitySource,
  messages: {
    thin: 'Up to {current} flow to or from the battery, and {size} with {insulation} insulation may carry {iz} as a guide value',
  },

  check(system) {
    const own = system.system.battery.cable
    const iz = own.size ? allowable(own, own.size.value, inside) : null
    const current = throughBattery(system)
    if (!own.size || iz === null || current === null || current <= iz) return null
    const correction = nextBatteryCable(system, Math.max(current, system.system.battery.fuse?.value ?? 0))
    return {
      say: 'thin',
      with: {
        current: figure(current, 'A'),
        size: said(own.size),
        insulation: said(own.insulation),
        iz: figure(iz, 'A'),
      },
      suspects: [own.size],
      ...(correction && { correction }),
    }
  },
})
