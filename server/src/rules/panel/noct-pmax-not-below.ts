import type { PanelRule } from '../about.ts'

export const noctPmaxNotBelow: PanelRule = {
  id: 'noct-pmax-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Pmax is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',

  check({ stc: { pmax }, noct }) {
    if (!pmax || !noct.pmax || pmax.value <= 0 || noct.pmax.value < pmax.value) return null
    const relation = noct.pmax.value > pmax.value ? 'above' : 'equal to'
    return {
      message: `Pmax at NOCT ${noct.pmax.text} is ${relation} Pmax ${pmax.text} at standard test conditions`,
      suspects: [noct.pmax, pmax],
    }
  },
}
