import { panelRule } from '../about.ts'

export const noctVmpNotBelow = panelRule({
  id: 'noct-vmp-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Vmp is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'Vmp at NOCT {atNoct} is above Vmp {vmp} at standard test conditions',
    equal: 'Vmp at NOCT {atNoct} is equal to Vmp {vmp} at standard test conditions',
  },

  check({ stc: { vmp }, noct }) {
    if (!vmp || !noct.vmp || vmp.value <= 0 || noct.vmp.value < vmp.value) return null
    const atNoct = noct.vmp
    const say = atNoct.value > vmp.value ? 'above' : 'equal'
    return { say, with: { atNoct, vmp }, suspects: [atNoct, vmp] }
  },
})
