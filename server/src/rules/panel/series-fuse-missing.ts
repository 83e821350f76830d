import type { PanelRule } from '../about.ts'

export const seriesFuseMissing: PanelRule = {
  id: 'series-fuse-missing',
  severity: 'hint',
  reason: 'Without maximum series fuse strings in parallel cannot be checked.',
  source: 'the derived values of a panel record',

  check(panel) {
    const anchor = panel.stc.isc
    if (!anchor || panel.limits.series_fuse) return null
    return { message: 'No maximum series fuse: strings in parallel cannot be checked', suspects: [anchor] }
  },
}
