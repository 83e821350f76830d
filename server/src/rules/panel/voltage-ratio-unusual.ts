import type { PanelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../technology.ts'
import { percent } from '../words.ts'

const crystalline = [0.715, 0.92] as const
const others = [0.62, 0.92] as const

export const voltageRatioUnusual: PanelRule = {
  id: 'voltage-ratio-unusual',
  severity: 'warning',
  reason: 'Vmp over Voc says how square the curve is; it hardly differs between panels of one kind.',
  source:
    'open module ratings of a public list, 2015 to 2022: crystalline 0.738 to 0.884, thin film 0.675 to 0.895, widened by 0.02',

  check(panel) {
    const { vmp, voc } = panel.stc
    if (!vmp || !voc || voc.value <= 0) return null
    const ratio = vmp.value / voc.value
    const usual = isCrystalline(panel) ? crystalline : others
    if (ratio < 0.5 || ratio >= 1 || inside(ratio, usual)) return null
    return {
      message: `Vmp ${vmp.text} is ${percent(ratio)} of Voc ${voc.text}, where ${percent(usual[0])} to ${percent(usual[1])} is usual`,
      suspects: [vmp, voc],
    }
  },
}
