import type { PanelRule } from '../about.ts'
import { offBy } from '../words.ts'

export const noctPmaxNotVmpTimesImp: PanelRule = {
  id: 'noct-pmax-not-vmp-times-imp',
  severity: 'warning',
  reason: 'Power is voltage times current at NOCT conditions too.',
  source: 'definition of Pmax, IEC 60904-1 (from memory)',

  check({ noct: { pmax, vmp, imp } }) {
    if (!pmax || !vmp || !imp || pmax.value <= 0) return null
    const product = vmp.value * imp.value
    const rounding = (pmax.quantity.half + vmp.quantity.half * imp.value + imp.quantity.half * vmp.value) / pmax.value
    if (Math.abs(product / pmax.value - 1) <= 0.03 + rounding) return null
    return {
      message: `Vmp ${vmp.text} times Imp ${imp.text} at NOCT is ${Number(product.toPrecision(4))} W, ${offBy(product / pmax.value)} Pmax at NOCT ${pmax.text}`,
      suspects: [pmax, vmp, imp],
    }
  },
}
