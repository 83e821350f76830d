import type { Battery } from '../../records/records.generated.ts'
import { short } from '../band.ts'
import type { Rule } from '../rule.ts'

export const batteryEnergyDisagrees: Rule<Battery> = {
  id: 'battery-energy-disagrees',
  severity: 'warning',
  reason: 'Energy is capacity times voltage.',
  source: 'arithmetic, 3 % for rounding',

  check({ energy, capacity: { amount }, nominal_voltage: nominal }) {
    if (!energy || !amount || !nominal) return null
    const product = amount.value * nominal.value
    if (product <= 0 || Math.abs(energy.value / product - 1) <= 0.03) return null
    return {
      message: `${energy.text} are not ${amount.text} x ${nominal.text}, which is ${short(product)} Wh`,
      suspects: [energy, amount, nominal],
    }
  },
}
