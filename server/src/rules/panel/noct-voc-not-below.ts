import { panelRule } from '../about.ts'

export const noctVocNotBelow = panelRule({
  id: 'noct-voc-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Voc is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'Voc at NOCT {atNoct} is above Voc {voc} at standard test conditions',
    equal: 'Voc at NOCT {atNoct} is equal to Voc {voc} at standard test conditions',
  },

  check({ stc: { voc }, noct }) {
    if (!voc || !noct.voc || voc.value <= 0 || noct.voc.value < voc.value) return null
    const atNoct = noct.voc
    const say = atNoct.value > voc.value ? 'above' : 'equal'
    return { say, with: { atNoct, voc }, suspects: [atNoct, voc] }
  },
})
