import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

export const noctImpRatioUnusual = panelRule({
  id: 'noct-imp-ratio-unusual',
  severity: 'warning',
  reason: 'Current goes with the light, so Imp at 800 W/m2 is about four fifths.',
  source: 'open module ratings of a public list, 2015 to 2022: Imp at NOCT over Imp, widened',
  messages: {
    unusual: 'Imp at NOCT {noctImp} is {ratio} of Imp {imp}, where 70 % to 88 % is usual',
  },

  check({ stc: { imp }, noct }) {
    if (!imp || !noct.imp || imp.value <= 0 || noct.imp.value >= imp.value) return null
    const ratio = noct.imp.value / imp.value
    if (inside(ratio, [0.7, 0.88])) return null
    return {
      say: 'unusual',
      with: { noctImp: noct.imp, ratio: percent(ratio), imp },
      suspects: [noct.imp, imp],
    }
  },
})
