import { figure, whole } from '../../findings/message.ts'
import { chemistries } from '../../values/chemistry.ts'
import { batteryRule } from '../over.ts'

export const batteryWeightUnusual = batteryRule({
  id: 'battery-weight-unusual',
  severity: 'warning',
  reason:
    'What a kilogram stores is a matter of the chemistry, so this shows pounds typed as kilograms or the wrong chemistry.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',
  messages: {
    unusual: '{each} from {weight}; {name} gives {low} to {high}',
  },

  check({ chemistry, weight, capacity: { amount }, nominal_voltage: nominal }) {
    if (!chemistry || !weight || weight.value <= 0 || !amount || !nominal) return null
    const { name, energyPerWeight: usual } = chemistries[chemistry.value]
    const each = (amount.value * nominal.value) / weight.value
    const [low, high] = [0.7 * usual[0], 1.4 * usual[1]]
    if (low <= each && each <= high) return null
    return {
      say: 'unusual',
      with: { each: figure(each, 'Wh/kg'), weight, name, low: whole(low), high: whole(high, 'Wh/kg') },
      suspects: [weight, amount],
    }
  },
})
