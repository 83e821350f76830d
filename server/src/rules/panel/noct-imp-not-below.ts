import { panelRule } from '../about.ts'

export const noctImpNotBelow = panelRule({
  id: 'noct-imp-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Imp is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'Imp at NOCT {atNoct} is above Imp {imp} at standard test conditions',
    equal: 'Imp at NOCT {atNoct} is equal to Imp {imp} at standard test conditions',
  },

  check({ stc: { imp }, noct }) {
    if (!imp || !noct.imp || imp.value <= 0 || noct.imp.value < imp.value) return null
    const atNoct = noct.imp
    const say = atNoct.value > imp.value ? 'above' : 'equal'
    return { say, with: { atNoct, imp }, suspects: [atNoct, imp] }
  },
})
