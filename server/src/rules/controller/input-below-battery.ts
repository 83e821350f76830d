import type { Measure } from '../../records/field.ts'
import { controllerRule } from '../over.ts'

export const inputBelowBattery = controllerRule({
  id: 'input-below-battery',
  severity: 'error',
  reason: 'A controller that only converts down needs more voltage from the panels than the battery has.',
  source: 'a buck converter lowers voltage; 20 % of headroom is common practice, no source',
  messages: {
    found: 'The input is rated for {max_voltage}, too little to charge even a battery of {lowest}',
  },

  check({ type, input, output }) {
    const lowest = output.battery_voltages.reduce<Measure | undefined>(
      (low, v) => (!low || v.value < low.value ? v : low),
      undefined,
    )
    if (type?.value !== 'mppt' || !input.max_voltage || !lowest || input.max_voltage.value >= 1.2 * lowest.value)
      return null
    return {
      say: 'found',
      with: { max_voltage: input.max_voltage, lowest },
      suspects: [input.max_voltage, lowest],
    }
  },
})
