import type { PanelRule } from '../about.ts'

export const noctMissing: PanelRule = {
  id: 'noct-missing',
  severity: 'hint',
  reason: 'Without NOCT the cell temperature in the heat rests on an assumed 46 °C.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.stc.pmax
    if (!anchor || panel.noct.temperature) return null
    return { message: 'No NOCT: the cell temperature in the heat rests on an assumed 46 °C', suspects: [anchor] }
  },
}
