import { estimate, figure } from '../../findings/message.ts'
import { bankOf } from '../bank.ts'
import { controllersOf, mostPower, sumOf } from '../controllers.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const arrayPowerHigh = reviewRule({
  id: 'array-power-high',
  severity: 'information',
  reason: 'What panels give beyond the power of their controller is not taken, and some makers void the warranty.',
  source: 'the maker’s limit; 30 % more is common practice, no source',
  messages: {
    high: '{stc} of panels are {share} more than the {most} that the controller can use on this bank',
  },

  check(system, figures) {
    const bank = bankOf(system)
    return controllersOf(system).flatMap((group) => {
      const [array] = group.arrays
      const { input } = group.controller?.record ?? {}
      const most = mostPower(group, bank?.voltage)
      const stc = sumOf(group, (_, i) => figures.arrays[i]?.pmax_stc_w ?? null)
      const place = array.entry.controller.id ?? input?.max_power
      if (!input?.max_power || !place || stc === null || most === null) return []
      if (stc <= 1.3 * most) return []
      return [
        {
          say: 'high',
          with: { stc: figure(stc, 'W'), share: estimate(100 * (stc / most - 1), '%'), most: figure(most, 'W') },
          suspects: [place],
          ...elsewhere(group.controller, input.max_power),
        },
      ]
    })
  },
})
