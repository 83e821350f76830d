import { figure } from '../../findings/message.ts'
import { chemistries } from '../../values/chemistry.ts'
import { batteryRule } from '../over.ts'

export const chargeRateUnusual = batteryRule({
  id: 'charge-rate-unusual',
  severity: 'information',
  reason: 'The charge current that a battery takes goes with its capacity.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',
  messages: {
    unusual: '{current} is {rate}C; {name} takes 0.05C to {most}C',
  },

  check({ chemistry, charge: { max_current: current }, capacity: { amount } }) {
    if (!chemistry || !current || !amount || amount.value <= 0) return null
    const rate = current.value / amount.value
    const most = chemistries[chemistry.value].lithium ? 1 : 0.4
    if (0.05 <= rate && rate <= most) return null
    return {
      say: 'unusual',
      with: { current, rate: figure(rate), name: chemistries[chemistry.value].name, most },
      suspects: [current, amount],
    }
  },
})
