import { panelRule } from '../about.ts'

export const noctVocNotBelow = panelRule({
  id: 'noct-voc-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Voc is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'above',
    equalTo: 'equal to',
    below: 'Voc at NOCT {noctVoc} is {relation} Voc {voc} at standard test conditions',
  },

  check({ stc: { voc }, noct }) {
    if (!voc || !noct.voc || voc.value <= 0 || noct.voc.value < voc.value) return null
    const relation = noct.voc.value > voc.value ? { say: 'above' } : { say: 'equalTo' }
    return {
      say: 'below',
      with: { noctVoc: noct.voc, relation, voc },
      suspects: [noct.voc, voc],
    }
  },
})
