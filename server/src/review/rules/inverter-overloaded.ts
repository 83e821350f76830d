import { figure } from '../../findings/message.ts'
import { acPower, startingPower } from '../bank-current.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const inverterOverloaded = reviewRule({
  id: 'inverter-overloaded',
  severity: 'warning',
  reason: 'An inverter that must give more than it can switches off, and all that hangs on it with it.',
  source: 'sum of the loads',
  messages: {
    allThatRuns:
      'All that runs at once on the inverter takes {ac}, more than its {power}; give loads that never run together one name under one_of',
    whileStartsThe: 'While {name} starts, the inverter must give {watts}, more than its surge of {surge}',
  },

  check(system) {
    const { power, surge } = system.system.inverter
    const ac = acPower(system)
    const start = startingPower(system)
    return [
      ...(power && power.value < ac
        ? [
            {
              say: 'allThatRuns',
              with: { ac: figure(ac, 'W'), power: said(power) },
              suspects: [power],
            } as const,
          ]
        : []),
      ...(surge && start && surge.value < start.watts
        ? [
            {
              say: 'whileStartsThe',
              with: { name: start.name, watts: figure(start.watts, 'W'), surge: said(surge) },
              suspects: [surge],
            } as const,
          ]
        : []),
    ]
  },
})
