import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

export const noctVmpRatioUnusual = panelRule({
  id: 'noct-vmp-ratio-unusual',
  severity: 'warning',
  reason: 'Warmth takes a little voltage, so Vmp at NOCT is some 5 to 12 % lower.',
  source: 'open module ratings of a public list, 2015 to 2022: Vmp at NOCT over Vmp, widened',
  messages: {
    unusual: 'Vmp at NOCT {noctVmp} is {ratio} of Vmp {vmp}, where 80 % to 100 % is usual',
  },

  check({ stc: { vmp }, noct }) {
    if (!vmp || !noct.vmp || vmp.value <= 0 || noct.vmp.value >= vmp.value) return null
    const ratio = noct.vmp.value / vmp.value
    if (inside(ratio, [0.8, 1.0])) return null
    return {
      say: 'unusual',
      with: { noctVmp: noct.vmp, ratio: percent(ratio), vmp },
      suspects: [noct.vmp, vmp],
    }
  },
})
