import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { offBy } from '../words.ts'

export const noctPmaxNotVmpTimesImp = panelRule({
  id: 'noct-pmax-not-vmp-times-imp',
  severity: 'warning',
  reason: 'Power is voltage times current at NOCT conditions too.',
  source: 'definition of Pmax, IEC 60904-1 (from memory)',
  messages: {
    found: 'Vmp {vmp} times Imp {imp} at NOCT is {power}, {value} Pmax at NOCT {pmax}',
  },

  check({ noct: { pmax, vmp, imp } }) {
    if (!pmax || !vmp || !imp || pmax.value <= 0) return null
    const product = vmp.value * imp.value
    const rounding = (pmax.quantity.half + vmp.quantity.half * imp.value + imp.quantity.half * vmp.value) / pmax.value
    if (Math.abs(product / pmax.value - 1) <= 0.03 + rounding) return null
    return {
      say: 'found',
      with: { vmp, imp, power: figure(product, 'W', 4), value: offBy(product / pmax.value), pmax },
      suspects: [pmax, vmp, imp],
    }
  },
})
