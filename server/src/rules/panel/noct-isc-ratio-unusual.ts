import type { PanelRule } from '../about.ts'
import { inside } from '../band.ts'
import { percent } from '../words.ts'

export const noctIscRatioUnusual: PanelRule = {
  id: 'noct-isc-ratio-unusual',
  severity: 'warning',
  reason: 'Current goes with the light, so Isc at 800 W/m2 is about four fifths.',
  source: 'I-V translation, IEC 60891 (from memory), for NOCT of 40 to 60 °C, widened',

  check({ stc: { isc }, noct }) {
    if (!isc || !noct.isc || isc.value <= 0 || noct.isc.value >= isc.value) return null
    const ratio = noct.isc.value / isc.value
    if (inside(ratio, [0.76, 0.86])) return null
    return {
      message: `Isc at NOCT ${noct.isc.text} is ${percent(ratio)} of Isc ${isc.text}, where 76 % to 86 % is usual`,
      suspects: [noct.isc, isc],
    }
  },
}
