import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { percentPerDegree } from '../words.ts'

export const mppCoefficientsDisagree = panelRule({
  id: 'mpp-coefficients-disagree',
  severity: 'information',
  reason: 'Power is voltage times current, so the coefficients of Vmp and Imp add up to that of Pmax.',
  source: 'open module ratings of a public list, 2015 to 2022: 90 % of 905 rows agree within 0.06 %/°C',
  messages: {
    disagree: 'The coefficients of Vmp {vmp} and Imp {imp} add up to {value}, and that of Pmax is {pmax}',
  },

  check({ temperature_coefficients: { pmax, vmp, imp }, stc }) {
    const gamma = relative(pmax, stc.pmax)
    const voltage = relative(vmp, stc.vmp)
    const current = relative(imp, stc.imp)
    if (!pmax || !vmp || !imp || gamma === undefined || voltage === undefined || current === undefined) return null
    if (Math.abs(gamma - voltage - current) <= 0.001) return null
    return {
      say: 'disagree',
      with: { vmp, imp, value: percentPerDegree(voltage + current), pmax },
      suspects: [pmax, vmp, imp],
    }
  },
})
