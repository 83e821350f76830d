import type { PanelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { negated } from '../negated.ts'

export const vmpCoefficientPositive: PanelRule = {
  id: 'vmp-coefficient-positive',
  severity: 'error',
  reason: 'Voltage falls as a panel warms, at full power even faster than with nothing connected.',
  source: 'D. L. King et al., Photovoltaic Array Performance Model, SAND2004-3535',

  check({ temperature_coefficients: { vmp }, stc }) {
    const value = relative(vmp, stc.vmp)
    if (!vmp || value === undefined || value <= 0) return null
    return { message: `The Vmp coefficient ${vmp.text} is positive`, suspects: [vmp], correction: negated(vmp) }
  },
}
