import { figure } from '../../findings/message.ts'
import { controllerRule } from '../over.ts'

export const controllerRatingsDisagree = controllerRule({
  id: 'controller-ratings-disagree',
  severity: 'warning',
  reason:
    'The charge current times the battery voltage is all the power that it can pass on, so the three belong together.',
  source: 'arithmetic; 25 % of play for charge voltages and rounding is common practice, no source',
  messages: {
    passes: '{power} at {voltage}',
    disagree: '{power} do not belong to {current}, which pass {list}',
  },

  check({ input: { max_power: power }, output: { max_current: current, battery_voltages: voltages } }) {
    if (!power || !current || current.value <= 0 || voltages.length === 0) return null
    const passed = voltages.map((v) => current.value * v.value)
    const fits = passed.some((p) => p / 1.25 <= power.value && power.value <= 1.45 * p)
    if (fits) return null
    const list = voltages.map((voltage, i) => ({ say: 'passes', with: { power: figure(passed[i]!, 'W'), voltage } }))
    return { say: 'disagree', with: { power, current, list: { list } }, suspects: [power, current] }
  },
})
