import type { PanelRule } from '../about.ts'

export const iscBelowImp: PanelRule = {
  id: 'isc-below-imp',
  severity: 'error',
  reason: 'A panel gives its highest current with its terminals joined, so Isc lies above the current at full power.',
  source: 'definition of Isc and Imp on the I-V curve, IEC 60904-1 (from memory)',

  check({ stc: { isc, imp } }) {
    if (!isc || !imp || isc.value > imp.value) return null
    const relation = isc.value < imp.value ? 'below' : 'equal to'
    return { message: `Isc ${isc.text} is ${relation} Imp ${imp.text}`, suspects: [isc, imp] }
  },
}
