import { panelRule } from '../about.ts'

export const vocBelowVmp = panelRule({
  id: 'voc-below-vmp',
  severity: 'error',
  reason: 'A panel gives its highest voltage with nothing connected, so Voc lies above the voltage at full power.',
  source: 'definition of Voc and Vmp on the I-V curve, IEC 60904-1 (from memory)',
  messages: {
    below: 'below',
    equalTo: 'equal to',
    found: 'Voc {voc} is {relation} Vmp {vmp}',
  },

  check({ stc: { voc, vmp } }) {
    if (!voc || !vmp || voc.value > vmp.value) return null
    const relation = voc.value < vmp.value ? { say: 'below' } : { say: 'equalTo' }
    return { say: 'found', with: { voc, relation, vmp }, suspects: [voc, vmp] }
  },
})
