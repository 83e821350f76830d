import { panelRule } from '../about.ts'

export const noctImpNotBelow = panelRule({
  id: 'noct-imp-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Imp is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'above',
    equalTo: 'equal to',
    below: 'Imp at NOCT {noctImp} is {relation} Imp {imp} at standard test conditions',
  },

  check({ stc: { imp }, noct }) {
    if (!imp || !noct.imp || imp.value <= 0 || noct.imp.value < imp.value) return null
    const relation = noct.imp.value > imp.value ? { say: 'above' } : { say: 'equalTo' }
    return {
      say: 'below',
      with: { noctImp: noct.imp, relation, imp },
      suspects: [noct.imp, imp],
    }
  },
})
