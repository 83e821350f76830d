import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { offBy } from '../words.ts'

export const pmaxNotVmpTimesImp = panelRule({
  id: 'pmax-not-vmp-times-imp',
  severity: 'warning',
  reason: 'Power is voltage times current, so Pmax, Vmp and Imp of one row must agree within their rounding.',
  source:
    'definition of Pmax, IEC 60904-1; of 2 535 open ratings with a nameplate 99 % are within 1.6 % and all within 5.6 %',
  messages: {
    found: 'Vmp {vmp} times Imp {imp} is {power}, {value} Pmax {pmax}',
  },

  check({ stc: { pmax, vmp, imp } }) {
    if (!pmax || !vmp || !imp || pmax.value <= 0) return null
    const product = vmp.value * imp.value
    const rounding = (pmax.quantity.half + vmp.quantity.half * imp.value + imp.quantity.half * vmp.value) / pmax.value
    const off = Math.abs(product / pmax.value - 1)
    if (off <= Math.max(0.016, rounding)) return null
    const severity = off > 0.06 + rounding ? 'error' : off > 0.05 + rounding ? 'warning' : 'information'
    return {
      say: 'found',
      with: { vmp, imp, power: figure(product, 'W', 4), value: offBy(product / pmax.value), pmax },
      suspects: [pmax, vmp, imp],
      severity,
    }
  },
})
