import { short } from '../../rules/band.ts'
import { acPower, startingPower } from '../bank-current.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const inverterOverloaded: ReviewRule = {
  id: 'inverter-overloaded',
  severity: 'warning',
  reason: 'An inverter that must give more than it can switches off, and all that hangs on it with it.',
  source: 'sum of the loads',

  check(system) {
    const { power, surge } = system.system.inverter
    const ac = acPower(system)
    const start = startingPower(system)
    return [
      ...(power && power.value < ac
        ? [
            {
              message: `All that runs at once on the inverter takes ${short(ac)} W, more than its ${said(power)}; give loads that never run together one name under one_of`,
              suspects: [power] as const,
            },
          ]
        : []),
      ...(surge && start && surge.value < start.watts
        ? [
            {
              message: `While ${start.name} starts, the inverter must give ${short(start.watts)} W, more than its surge of ${said(surge)}`,
              suspects: [surge] as const,
            },
          ]
        : []),
    ]
  },
}
