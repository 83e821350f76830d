import { panelRule } from '../about.ts'

export const noctPmaxNotBelow = panelRule({
  id: 'noct-pmax-not-below',
  severity: 'error',
  reason: 'At 800 W/m2 and warm, Pmax is below its value at standard test conditions; else the two rows are mixed up.',
  source: 'definition of NOCT conditions, 800 W/m2 and 20 °C air, IEC 61215 (from memory)',
  messages: {
    above: 'Pmax at NOCT {atNoct} is above Pmax {pmax} at standard test conditions',
    equal: 'Pmax at NOCT {atNoct} is equal to Pmax {pmax} at standard test conditions',
  },

  check({ stc: { pmax }, noct }) {
    if (!pmax || !noct.pmax || pmax.value <= 0 || noct.pmax.value < pmax.value) return null
    const atNoct = noct.pmax
    const say = atNoct.value > pmax.value ? 'above' : 'equal'
    return { say, with: { atNoct, pmax }, suspects: [atNoct, pmax] }
  },
})
