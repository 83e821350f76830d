import { figure } from '../../findings/message.ts'
import { controllerRule } from '../over.ts'

export const ownConsumptionHigh = controllerRule({
  id: 'own-consumption-high',
  severity: 'information',
  reason: 'Milliamperes typed as amperes drain the battery on paper.',
  source: 'common practice, no source',
  messages: {
    high: 'An own consumption of {own} is {power} at {lowest} V, day and night; a few milliamperes are usual',
  },

  check({ self_consumption: own, output: { battery_voltages: voltages } }) {
    const lowest = Math.min(...voltages.map((v) => v.value), 12)
    if (!own || own.value * lowest <= 5) return null
    return {
      say: 'high',
      with: { own, power: figure(own.value * lowest, 'W'), lowest },
      suspects: [own],
    }
  },
})
