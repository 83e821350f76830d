import { panelRule } from '../about.ts'

export const noctIscBelowImp = panelRule({
  id: 'noct-isc-below-imp',
  severity: 'error',
  reason: 'At NOCT as at any other condition Isc is above Imp.',
  source: 'definition of Isc and Imp on the I-V curve, IEC 60904-1 (from memory)',
  messages: {
    found: 'Isc at NOCT {isc} is not above Imp at NOCT {imp}',
  },

  check({ noct: { isc, imp } }) {
    if (!isc || !imp || isc.value > imp.value) return null
    return { say: 'found', with: { isc, imp }, suspects: [isc, imp] }
  },
})
