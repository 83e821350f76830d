import type { PanelRule } from '../about.ts'

export const vocBelowVmp: PanelRule = {
  id: 'voc-below-vmp',
  severity: 'error',
  reason: 'A panel gives its highest voltage with nothing connected, so Voc lies above the voltage at full power.',
  source: 'definition of Voc and Vmp on the I-V curve, IEC 60904-1 (from memory)',

  check({ stc: { voc, vmp } }) {
    if (!voc || !vmp || voc.value > vmp.value) return null
    const relation = voc.value < vmp.value ? 'below' : 'equal to'
    return { message: `Voc ${voc.text} is ${relation} Vmp ${vmp.text}`, suspects: [voc, vmp] }
  },
}
