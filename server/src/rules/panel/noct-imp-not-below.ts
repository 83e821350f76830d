import type { PanelRule } from '../about.ts'

export const noctImpNotBelow: PanelRule = {
  id: 'noct-imp-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Imp is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',

  check({ stc: { imp }, noct }) {
    if (!imp || !noct.imp || imp.value <= 0 || noct.imp.value < imp.value) return null
    const relation = noct.imp.value > imp.value ? 'above' : 'equal to'
    return {
      message: `Imp at NOCT ${noct.imp.text} is ${relation} Imp ${imp.text} at standard test conditions`,
      suspects: [noct.imp, imp],
    }
  },
}
