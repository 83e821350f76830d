import { figure } from '../../findings/message.ts'
import { batteryRule } from '../over.ts'

export const batteryEnergyDisagrees = batteryRule({
  id: 'battery-energy-disagrees',
  severity: 'warning',
  reason: 'Energy is capacity times voltage.',
  source: 'arithmetic, 3 % for rounding',
  messages: {
    disagrees: '{energy} are not {amount} x {nominal}, which is {product}',
  },

  check({ energy, capacity: { amount }, nominal_voltage: nominal }) {
    if (!energy || !amount || !nominal) return null
    const product = amount.value * nominal.value
    if (product <= 0 || Math.abs(energy.value / product - 1) <= 0.03) return null
    return {
      say: 'disagrees',
      with: { energy, amount, nominal, product: figure(product, 'Wh') },
      suspects: [energy, amount, nominal],
    }
  },
})
