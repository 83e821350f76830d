import { panelRule } from '../about.ts'

export const noctPmaxNotBelow = panelRule({
  id: 'noct-pmax-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Pmax is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'above',
    equalTo: 'equal to',
    below: 'Pmax at NOCT {noctPmax} is {relation} Pmax {pmax} at standard test conditions',
  },

  check({ stc: { pmax }, noct }) {
    if (!pmax || !noct.pmax || pmax.value <= 0 || noct.pmax.value < pmax.value) return null
    const relation = noct.pmax.value > pmax.value ? { say: 'above' } : { say: 'equalTo' }
    return {
      say: 'below',
      with: { noctPmax: noct.pmax, relation, pmax },
      suspects: [noct.pmax, pmax],
    }
  },
})
