import type { PanelRule } from '../about.ts'

export const systemVoltageMissing: PanelRule = {
  id: 'system-voltage-missing',
  severity: 'hint',
  reason: 'Without maximum system voltage strings in series cannot be checked.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.stc.voc
    if (!anchor || panel.limits.system_voltage) return null
    return { message: 'No maximum system voltage: strings in series cannot be checked', suspects: [anchor] }
  },
}
