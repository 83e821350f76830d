import { panelRule } from '../about.ts'

export const seriesFuseLow = panelRule({
  id: 'series-fuse-low',
  severity: 'warning',
  reason: 'A fuse below 1.25 Isc would blow in bright sun, so the sheet cannot mean it.',
  source: 'US practice, 1.25 Isc (NEC 690.8; from memory)',
  messages: {
    low: 'The series fuse {fuse} is below 1.25 times Isc {isc}',
  },

  check({ limits: { series_fuse: fuse }, stc: { isc } }) {
    if (!fuse || !isc || fuse.value <= 0 || fuse.value >= 1.25 * isc.value) return null
    return { say: 'low', with: { fuse, isc }, suspects: [fuse, isc] }
  },
})
