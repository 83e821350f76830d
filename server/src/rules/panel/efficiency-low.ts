import type { PanelRule } from '../about.ts'
import { efficiencyOf } from '../efficiency-of.ts'
import { isCrystalline } from '../technology.ts'
import { percent } from '../words.ts'

export const efficiencyLow: PanelRule = {
  id: 'efficiency-low',
  severity: 'warning',
  reason: 'So little power from so much area means that a side or the power lost or gained a digit.',
  source:
    'open module ratings of a public list, 2015 to 2022: no crystalline module below 6.2 %, no thin film below 3.6 %',

  check(panel) {
    const { pmax } = panel.stc
    const { length, width } = panel.size
    const efficiency = efficiencyOf(panel)
    if (efficiency === undefined || !pmax || !length || !width || efficiency <= 0) return null
    const limit = isCrystalline(panel) ? 0.055 : 0.03
    if (efficiency >= limit) return null
    return {
      message: `Pmax ${pmax.text} on ${length.text} by ${width.text} would be an efficiency of ${percent(efficiency)}, below ${percent(limit)}`,
      suspects: [pmax, length, width],
      severity: efficiency < limit / 5 ? 'error' : 'warning',
    }
  },
}
