import { celsius, figure } from '../../findings/message.ts'
import { coldVoltageFactor } from '../../physics/cold-voltage.ts'
import { derive } from '../../values/derived.ts'
import { vocCold } from '../../values/voc-cold.ts'
import { panelRule } from '../about.ts'

export const systemVoltageLow = panelRule({
  id: 'system-voltage-low',
  severity: 'warning',
  reason: 'A panel must be rated for at least its own voltage on a cold day.',
  source:
    'coefficient method of US and IEC practice (NEC 690.7, IEC 62548; from memory); where no coefficient is given, NEC table 690.7(A) (as quoted in an open code)',
  messages: {
    low: 'The system voltage {limit} is below the {cold} that Voc {voc} becomes at {coldest}',
  },

  check(panel, { site }) {
    const { system_voltage: limit } = panel.limits
    const { voc } = panel.stc
    if (!limit || !voc || limit.value <= 0) return null
    const cold = derive(vocCold, panel, site).value ?? voc.value * coldVoltageFactor(site.coldest)
    if (cold <= limit.value) return null
    return {
      say: 'low',
      with: { limit, cold: figure(cold, 'V'), voc, coldest: celsius(site.coldest) },
      suspects: [limit, voc],
    }
  },
})
