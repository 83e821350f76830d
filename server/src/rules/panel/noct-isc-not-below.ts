import { panelRule } from '../about.ts'

export const noctIscNotBelow = panelRule({
  id: 'noct-isc-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Isc is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'above',
    equalTo: 'equal to',
    below: 'Isc at NOCT {noctIsc} is {relation} Isc {isc} at standard test conditions',
  },

  check({ stc: { isc }, noct }) {
    if (!isc || !noct.isc || isc.value <= 0 || noct.isc.value < isc.value) return null
    const relation = noct.isc.value > isc.value ? { say: 'above' } : { say: 'equalTo' }
    return {
      say: 'below',
      with: { noctIsc: noct.isc, relation, isc },
      suspects: [noct.isc, isc],
    }
  },
})
