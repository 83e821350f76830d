import type { PanelRule } from '../about.ts'

export const noctIscNotBelow: PanelRule = {
  id: 'noct-isc-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Isc is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',

  check({ stc: { isc }, noct }) {
    if (!isc || !noct.isc || isc.value <= 0 || noct.isc.value < isc.value) return null
    const relation = noct.isc.value > isc.value ? 'above' : 'equal to'
    return {
      message: `Isc at NOCT ${noct.isc.text} is ${relation} Isc ${isc.text} at standard test conditions`,
      suspects: [noct.isc, isc],
    }
  },
}
