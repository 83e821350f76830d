import type { PanelRule } from '../about.ts'

export const datasheetMissing: PanelRule = {
  id: 'datasheet-missing',
  severity: 'hint',
  reason: 'Without datasheet reference nobody can look the numbers up again.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.name
    if (!anchor || panel.datasheet.source) return null
    return { message: 'No datasheet reference: nobody can look the numbers up again', suspects: [anchor] }
  },
}
