import type { Controller } from '../../records/records.generated.ts'
import type { Rule } from '../rule.ts'

/** [V] */
const pwm = [15, 60] as const
const mppt = [20, 1000] as const

export const inputVoltageUnusual: Rule<Controller> = {
  id: 'input-voltage-unusual',
  severity: 'information',
  reason: 'Controllers of one kind have inputs of much the same size, so an odd one is often a slip of a digit.',
  source: 'common practice, no source',

  check({ type, input: { max_voltage: max } }) {
    if (!type || !max) return null
    const [low, high] = type.value === 'pwm' ? pwm : mppt
    if (low <= max.value && max.value <= high) return null
    return {
      message: `A maximum input voltage of ${max.text} is unusual for ${type.value.toUpperCase()}, where ${low} to ${high} V is usual`,
      suspects: [max],
    }
  },
}
