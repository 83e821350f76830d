import { panelRule } from '../about.ts'

export const vocBelowVmp = panelRule({
  id: 'voc-below-vmp',
  severity: 'error',
  reason: 'A panel gives its highest voltage with nothing connected, so Voc is above the voltage at full power.',
  source: 'definition of Voc and Vmp on the I-V curve, IEC 60904-1 (from memory)',
  messages: { below: 'Voc {voc} is below Vmp {vmp}', equal: 'Voc {voc} is equal to Vmp {vmp}' },

  check({ stc: { voc, vmp } }) {
    if (!voc || !vmp || voc.value > vmp.value) return null
    return { say: voc.value < vmp.value ? 'below' : 'equal', with: { voc, vmp }, suspects: [voc, vmp] }
  },
})
