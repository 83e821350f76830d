import type { PanelRule } from '../about.ts'

export const noctVmpNotBelow: PanelRule = {
  id: 'noct-vmp-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Vmp is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',

  check({ stc: { vmp }, noct }) {
    if (!vmp || !noct.vmp || vmp.value <= 0 || noct.vmp.value < vmp.value) return null
    const relation = noct.vmp.value > vmp.value ? 'above' : 'equal to'
    return {
      message: `Vmp at NOCT ${noct.vmp.text} is ${relation} Vmp ${vmp.text} at standard test conditions`,
      suspects: [noct.vmp, vmp],
    }
  },
}
