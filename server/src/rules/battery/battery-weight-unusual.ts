import type { Battery } from '../../records/records.generated.ts'
import { short } from '../band.ts'
import { chemistries } from '../chemistry.ts'
import type { Rule } from '../rule.ts'

export const batteryWeightUnusual: Rule<Battery> = {
  id: 'battery-weight-unusual',
  severity: 'warning',
  reason:
    'What a kilogram stores is a matter of the chemistry, so this shows pounds typed as kilograms or the wrong chemistry.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',

  check({ chemistry, weight, capacity: { amount }, nominal_voltage: nominal }) {
    if (!chemistry || !weight || weight.value <= 0 || !amount || !nominal) return null
    const { name, energyPerWeight: usual } = chemistries[chemistry.value]
    const each = (amount.value * nominal.value) / weight.value
    if (0.7 * usual[0] <= each && each <= 1.4 * usual[1]) return null
    return {
      message: `${short(each)} Wh/kg from ${weight.text} lie outside what ${name} gives, ${usual[0]} to ${usual[1]} Wh/kg`,
      suspects: [weight, amount],
    }
  },
}
