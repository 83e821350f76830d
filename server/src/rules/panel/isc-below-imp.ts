import { panelRule } from '../about.ts'

export const iscBelowImp = panelRule({
  id: 'isc-below-imp',
  severity: 'error',
  reason: 'A panel gives its highest current with its terminals joined, so Isc is above the current at full power.',
  source: 'definition of Isc and Imp on the I-V curve, IEC 60904-1 (from memory)',
  messages: { below: 'Isc {isc} is below Imp {imp}', equal: 'Isc {isc} is equal to Imp {imp}' },

  check({ stc: { isc, imp } }) {
    if (!isc || !imp || isc.value > imp.value) return null
    return { say: isc.value < imp.value ? 'below' : 'equal', with: { isc, imp }, suspects: [isc, imp] }
  },
})
