import type { PanelRule } from '../about.ts'

export const vocCoefficientMissing: PanelRule = {
  id: 'voc-coefficient-missing',
  severity: 'hint',
  reason: 'Without Voc coefficient the voltage of the coldest morning is not known.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.stc.voc
    if (!anchor || panel.temperature_coefficients.voc) return null
    return { message: 'No Voc coefficient: the voltage of the coldest morning is not known', suspects: [anchor] }
  },
}
