import type { Controller } from '../../records/records.generated.ts'
import { short } from '../band.ts'
import type { Rule } from '../rule.ts'

export const controllerRatingsDisagree: Rule<Controller> = {
  id: 'controller-ratings-disagree',
  severity: 'warning',
  reason:
    'The charge current times the battery voltage is all the power that it can pass on, so the three belong together.',
  source: 'arithmetic; 25 % of play for charge voltages and rounding is common practice, no source',

  check({ input: { max_power: power }, output: { max_current: current, battery_voltages: voltages } }) {
    if (!power || !current || current.value <= 0 || voltages.length === 0) return null
    const passed = voltages.map((v) => current.value * v.value)
    const fits = passed.some((p) => p / 1.25 <= power.value && power.value <= 1.45 * p)
    if (fits) return null
    const list = voltages.map((v, i) => `${short(passed[i]!)} W at ${v.text}`).join(', ')
    return { message: `${power.text} do not belong to ${current.text}, which pass ${list}`, suspects: [power, current] }
  },
}
