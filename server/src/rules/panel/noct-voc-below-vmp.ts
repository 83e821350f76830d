import { panelRule } from '../about.ts'

export const noctVocBelowVmp = panelRule({
  id: 'noct-voc-below-vmp',
  severity: 'error',
  reason: 'At NOCT as at any other condition Voc is above Vmp.',
  source: 'definition of Voc and Vmp on the I-V curve, IEC 60904-1 (from memory)',
  messages: {
    found: 'Voc at NOCT {voc} is not above Vmp at NOCT {vmp}',
  },

  check({ noct: { voc, vmp } }) {
    if (!voc || !vmp || voc.value > vmp.value) return null
    return { say: 'found', with: { voc, vmp }, suspects: [voc, vmp] }
  },
})
