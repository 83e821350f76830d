import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { efficiencyOf } from '../efficiency-of.ts'
import { isCrystalline } from '../../values/technology.ts'

export const efficiencyLow = panelRule({
  id: 'efficiency-low',
  severity: 'warning',
  reason: 'So little power from so much area means that a side or the power lost or gained a digit.',
  source:
    'open module ratings of a public list, 2015 to 2022: no crystalline module below 6.2 %, no thin film below 3.6 %',
  messages: {
    low: 'Pmax {pmax} on {length} by {width} would be an efficiency of {efficiency}, below {limit}',
  },

  check(panel) {
    const { pmax } = panel.stc
    const { length, width } = panel.size
    const efficiency = efficiencyOf(panel)
    if (efficiency === undefined || !pmax || !length || !width || efficiency <= 0) return null
    const limit = isCrystalline(panel) ? 0.055 : 0.03
    if (efficiency >= limit) return null
    return {
      say: 'low',
      with: { pmax, length, width, efficiency: percent(efficiency), limit: percent(limit) },
      suspects: [pmax, length, width],
      severity: efficiency < limit / 5 ? 'error' : 'warning',
    }
  },
})
