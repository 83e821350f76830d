import { figure } from '../../findings/message.ts'
import { bankOf } from '../bank.ts'
import { controllersOf, sumOf } from '../controllers.ts'
import { elsewhere } from '../rule.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const chargeCurrentClipped = reviewRule({
  id: 'charge-current-clipped',
  severity: 'information',
  reason: 'A controller passes no more than its current; what the panels could give beyond it is lost on good days.',
  source: 'oversizing by 30 % is common practice, no source',
  messages: {
    clipped: '{hot} in the heat would charge with {current}; the controller passes {most}',
  },

  check(system, figures) {
    const bank = bankOf(system)
    if (!bank) return null
    return controllersOf(system).flatMap((group) => {
      const [array] = group.arrays
      const most = array.controller?.record.output.max_current
      const hot = sumOf(group, (_, i) => figures.arrays[i]?.pmax_hot_w ?? null)
      if (!most || most.value <= 0 || hot === null || array.controller?.record.type?.value !== 'mppt') return []
      const place = array.entry.controller.id ?? most
      const share = hot / bank.charging / most.value
      if (share <= 1.3) return []
      return [
        {
          say: 'clipped',
          with: {
            hot: figure(hot, 'W'),
            current: figure(hot / bank.charging, 'A'),
            most: said(most),
          },
          suspects: [place],
          severity: share > 1.5 ? ('warning' as const) : ('information' as const),
          ...elsewhere(array.controller, most),
        },
      ]
    })
  },
})
