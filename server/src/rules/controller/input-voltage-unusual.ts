import { controllerRule } from '../over.ts'

/** [V] */
const pwm = [15, 60] as const
const mppt = [20, 1000] as const

export const inputVoltageUnusual = controllerRule({
  id: 'input-voltage-unusual',
  severity: 'information',
  reason: 'Controllers of one kind have inputs of much the same size, so an odd one is often a slip of a digit.',
  source: 'common practice, no source',
  messages: {
    unusual: 'A maximum input voltage of {max} is unusual for {value}, where {low} to {high} V is usual',
  },

  check({ type, input: { max_voltage: max } }) {
    if (!type || !max) return null
    const [low, high] = type.value === 'pwm' ? pwm : mppt
    if (low <= max.value && max.value <= high) return null
    return {
      say: 'unusual',
      with: { max, value: type.value.toUpperCase(), low, high },
      suspects: [max],
    }
  },
})
