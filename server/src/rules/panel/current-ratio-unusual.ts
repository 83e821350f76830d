import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

const crystalline = [0.73, 0.995] as const
const others = [0.68, 0.98] as const

export const currentRatioUnusual = panelRule({
  id: 'current-ratio-unusual',
  severity: 'warning',
  reason: 'Imp over Isc says how square the curve is; it hardly differs between panels of one kind.',
  source:
    'open module ratings of a public list, 2015 to 2022: crystalline 0.748 to 0.989, thin film 0.728 to 0.945, widened',
  messages: {
    unusual: 'Imp {imp} is {ratio} of Isc {isc}, where {share} to {share2} is usual',
  },

  check(panel) {
    const { imp, isc } = panel.stc
    if (!imp || !isc || isc.value <= 0) return null
    const ratio = imp.value / isc.value
    const usual = isCrystalline(panel) ? crystalline : others
    if (ratio < 0.5 || ratio >= 1 || inside(ratio, usual)) return null
    return {
      say: 'unusual',
      with: { imp, ratio: percent(ratio), isc, share: percent(usual[0]), share2: percent(usual[1]) },
      suspects: [imp, isc],
    }
  },
})
