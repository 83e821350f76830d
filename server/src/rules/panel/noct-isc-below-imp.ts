import type { PanelRule } from '../about.ts'

export const noctIscBelowImp: PanelRule = {
  id: 'noct-isc-below-imp',
  severity: 'error',
  reason: 'At NOCT as at any other condition Isc lies above Imp.',
  source: 'definition of Isc and Imp on the I-V curve, IEC 60904-1 (from memory)',

  check({ noct: { isc, imp } }) {
    if (!isc || !imp || isc.value > imp.value) return null
    return { message: `Isc at NOCT ${isc.text} is not above Imp at NOCT ${imp.text}`, suspects: [isc, imp] }
  },
}
