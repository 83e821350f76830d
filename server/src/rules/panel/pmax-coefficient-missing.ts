import type { PanelRule } from '../about.ts'

export const pmaxCoefficientMissing: PanelRule = {
  id: 'pmax-coefficient-missing',
  severity: 'hint',
  reason: 'Without Pmax coefficient the power on a hot day is not known.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.stc.pmax
    if (!anchor || panel.temperature_coefficients.pmax) return null
    return { message: 'No Pmax coefficient: the power on a hot day is not known', suspects: [anchor] }
  },
}
