import type { PanelRule } from '../about.ts'
import { inside } from '../band.ts'
import { percent } from '../words.ts'

export const noctVmpRatioUnusual: PanelRule = {
  id: 'noct-vmp-ratio-unusual',
  severity: 'warning',
  reason: 'Warmth takes a little voltage, so Vmp at NOCT is some 5 to 12 % lower.',
  source: 'open module ratings of a public list, 2015 to 2022: Vmp at NOCT over Vmp, widened',

  check({ stc: { vmp }, noct }) {
    if (!vmp || !noct.vmp || vmp.value <= 0 || noct.vmp.value >= vmp.value) return null
    const ratio = noct.vmp.value / vmp.value
    if (inside(ratio, [0.8, 1.0])) return null
    return {
      message: `Vmp at NOCT ${noct.vmp.text} is ${percent(ratio)} of Vmp ${vmp.text}, where 80 % to 100 % is usual`,
      suspects: [noct.vmp, vmp],
    }
  },
}
