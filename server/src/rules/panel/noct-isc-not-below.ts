import { panelRule } from '../about.ts'

export const noctIscNotBelow = panelRule({
  id: 'noct-isc-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Isc is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'Isc at NOCT {atNoct} is above Isc {isc} at standard test conditions',
    equal: 'Isc at NOCT {atNoct} is equal to Isc {isc} at standard test conditions',
  },

  check({ stc: { isc }, noct }) {
    if (!isc || !noct.isc || isc.value <= 0 || noct.isc.value < isc.value) return null
    const atNoct = noct.isc
    const say = atNoct.value > isc.value ? 'above' : 'equal'
    return { say, with: { atNoct, isc }, suspects: [atNoct, isc] }
  },
})
