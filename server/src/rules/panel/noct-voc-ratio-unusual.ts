import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

export const noctVocRatioUnusual = panelRule({
  id: 'noct-voc-ratio-unusual',
  severity: 'warning',
  reason: 'Warmth takes a little voltage, so Voc at NOCT is some 5 to 10 % lower.',
  source: 'I-V translation, IEC 60891 (from memory), for NOCT of 40 to 60 °C, widened',
  messages: {
    unusual: 'Voc at NOCT {noctVoc} is {ratio} of Voc {voc}, where 86 % to 98 % is usual',
  },

  check({ stc: { voc }, noct }) {
    if (!voc || !noct.voc || voc.value <= 0 || noct.voc.value >= voc.value) return null
    const ratio = noct.voc.value / voc.value
    if (inside(ratio, [0.86, 0.98])) return null
    return {
      say: 'unusual',
      with: { noctVoc: noct.voc, ratio: percent(ratio), voc },
      suspects: [noct.voc, voc],
    }
  },
})
