import type { PanelRule } from '../about.ts'

export const noctVocNotBelow: PanelRule = {
  id: 'noct-voc-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Voc is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',

  check({ stc: { voc }, noct }) {
    if (!voc || !noct.voc || voc.value <= 0 || noct.voc.value < voc.value) return null
    const relation = noct.voc.value > voc.value ? 'above' : 'equal to'
    return {
      message: `Voc at NOCT ${noct.voc.text} is ${relation} Voc ${voc.text} at standard test conditions`,
      suspects: [noct.voc, voc],
    }
  },
}
