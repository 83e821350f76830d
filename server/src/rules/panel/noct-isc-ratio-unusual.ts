import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

export const noctIscRatioUnusual = panelRule({
  id: 'noct-isc-ratio-unusual',
  severity: 'warning',
  reason: 'Current goes with the light, so Isc at 800 W/m2 is about four fifths.',
  source: 'I-V translation, IEC 60891 (from memory), for NOCT of 40 to 60 °C, widened',
  messages: {
    unusual: 'Isc at NOCT {noctIsc} is {ratio} of Isc {isc}, where 76 % to 86 % is usual',
  },

  check({ stc: { isc }, noct }) {
    if (!isc || !noct.isc || isc.value <= 0 || noct.isc.value >= isc.value) return null
    const ratio = noct.isc.value / isc.value
    if (inside(ratio, [0.76, 0.86])) return null
    return {
      say: 'unusual',
      with: { noctIsc: noct.isc, ratio: percent(ratio), isc },
      suspects: [noct.isc, isc],
    }
  },
})
