import type { PanelRule } from '../about.ts'

export const bendMissing: PanelRule = {
  id: 'bend-missing',
  severity: 'hint',
  reason: 'Without bend limit a curved surface cannot be checked.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.construction
    if (!anchor || panel.limits.bend || panel.construction?.value !== 'flexible') return null
    return { message: 'No bend limit: a curved surface cannot be checked', suspects: [anchor] }
  },
}
