import type { PanelRule } from '../about.ts'

export const cellsMissing: PanelRule = {
  id: 'cells-missing',
  severity: 'hint',
  reason: 'Without cells in series Voc cannot be checked against the cell count.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.stc.voc
    if (!anchor || panel.cells.in_series) return null
    return { message: 'No cells in series: Voc cannot be checked against the cell count', suspects: [anchor] }
  },
}
