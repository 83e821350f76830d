import type { PanelRule } from '../about.ts'

export const noctVocBelowVmp: PanelRule = {
  id: 'noct-voc-below-vmp',
  severity: 'error',
  reason: 'At NOCT as at any other condition Voc lies above Vmp.',
  source: 'definition of Voc and Vmp on the I-V curve, IEC 60904-1 (from memory)',

  check({ noct: { voc, vmp } }) {
    if (!voc || !vmp || voc.value > vmp.value) return null
    return { message: `Voc at NOCT ${voc.text} is not above Vmp at NOCT ${vmp.text}`, suspects: [voc, vmp] }
  },
}
