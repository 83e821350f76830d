import type { PanelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../technology.ts'
import { percent } from '../words.ts'

const crystalline = [0.73, 0.995] as const
const others = [0.68, 0.98] as const

export const currentRatioUnusual: PanelRule = {
  id: 'current-ratio-unusual',
  severity: 'warning',
  reason: 'Imp over Isc says how square the curve is; it hardly differs between panels of one kind.',
  source:
    'open module ratings of a public list, 2015 to 2022: crystalline 0.748 to 0.989, thin film 0.728 to 0.945, widened',

  check(panel) {
    const { imp, isc } = panel.stc
    if (!imp || !isc || isc.value <= 0) return null
    const ratio = imp.value / isc.value
    const usual = isCrystalline(panel) ? crystalline : others
    if (ratio < 0.5 || ratio >= 1 || inside(ratio, usual)) return null
    return {
      message: `Imp ${imp.text} is ${percent(ratio)} of Isc ${isc.text}, where ${percent(usual[0])} to ${percent(usual[1])} is usual`,
      suspects: [imp, isc],
    }
  },
}
