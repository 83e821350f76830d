import { coldVoltageFactor } from '../../physics/cold-voltage.ts'
import { derive } from '../../values/derived.ts'
import { vocCold } from '../../values/voc-cold.ts'
import type { PanelRule } from '../about.ts'
import { short } from '../band.ts'

export const systemVoltageLow: PanelRule = {
  id: 'system-voltage-low',
  severity: 'warning',
  reason: 'A panel must bear at least its own voltage on a cold day.',
  source:
    'coefficient method of US and IEC practice (NEC 690.7, IEC 62548; from memory); where no coefficient is given, NEC table 690.7(A) (as quoted in an open code)',

  check(panel, { site }) {
    const { system_voltage: limit } = panel.limits
    const { voc } = panel.stc
    if (!limit || !voc || limit.value <= 0) return null
    const cold = derive(vocCold, panel, site).value ?? voc.value * coldVoltageFactor(site.coldest)
    if (cold <= limit.value) return null
    return {
      message: `The system voltage ${limit.text} is below the ${short(cold)} V that Voc ${voc.text} becomes at ${site.coldest} °C`,
      suspects: [limit, voc],
    }
  },
}
