import { panelRule } from '../about.ts'

export const iscBelowImp = panelRule({
  id: 'isc-below-imp',
  severity: 'error',
  reason: 'A panel gives its highest current with its terminals joined, so Isc lies above the current at full power.',
  source: 'definition of Isc and Imp on the I-V curve, IEC 60904-1 (from memory)',
  messages: {
    below: 'below',
    equalTo: 'equal to',
    found: 'Isc {isc} is {relation} Imp {imp}',
  },

  check({ stc: { isc, imp } }) {
    if (!isc || !imp || isc.value > imp.value) return null
    const relation = isc.value < imp.value ? { say: 'below' } : { say: 'equalTo' }
    return { say: 'found', with: { isc, relation, imp }, suspects: [isc, imp] }
  },
})
