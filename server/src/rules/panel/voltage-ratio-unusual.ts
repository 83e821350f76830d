import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

const crystalline = [0.715, 0.92] as const
const others = [0.62, 0.92] as const

export const voltageRatioUnusual = panelRule({
  id: 'voltage-ratio-unusual',
  severity: 'warning',
  reason: 'Vmp over Voc says how square the curve is; it hardly differs between panels of one kind.',
  source:
    'open module ratings of a public list, 2015 to 2022: crystalline 0.738 to 0.884, thin film 0.675 to 0.895, widened by 0.02',
  messages: {
    unusual: 'Vmp {vmp} is {ratio} of Voc {voc}, where {share} to {share2} is usual',
  },

  check(panel) {
    const { vmp, voc } = panel.stc
    if (!vmp || !voc || voc.value <= 0) return null
    const ratio = vmp.value / voc.value
    const usual = isCrystalline(panel) ? crystalline : others
    if (ratio < 0.5 || ratio >= 1 || inside(ratio, usual)) return null
    return {
      say: 'unusual',
      with: { vmp, ratio: percent(ratio), voc, share: percent(usual[0]), share2: percent(usual[1]) },
      suspects: [vmp, voc],
    }
  },
})
