import type { Controller } from '../../records/records.generated.ts'
import { short } from '../band.ts'
import type { Rule } from '../rule.ts'

export const ownConsumptionHigh: Rule<Controller> = {
  id: 'own-consumption-high',
  severity: 'information',
  reason: 'Milliamperes typed as amperes drain the battery on paper.',
  source: 'common practice, no source',

  check({ self_consumption: own, output: { battery_voltages: voltages } }) {
    const lowest = Math.min(...voltages.map((v) => v.value), 12)
    if (!own || own.value * lowest <= 5) return null
    return {
      message: `An own consumption of ${own.text} is ${short(own.value * lowest)} W at ${lowest} V, day and night; a few milliamperes are usual`,
      suspects: [own],
    }
  },
}
