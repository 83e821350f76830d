import type { PanelRule } from '../about.ts'

export const weightMissing: PanelRule = {
  id: 'weight-missing',
  severity: 'hint',
  reason: 'Without weight power per weight is not known.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.name
    if (!anchor || panel.weight) return null
    return { message: 'No weight: power per weight is not known', suspects: [anchor] }
  },
}
