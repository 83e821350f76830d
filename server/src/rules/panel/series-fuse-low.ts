import { panelRule } from '../about.ts'

/** Below the first a fuse blows in bright sun; below the second no string fuse of IEC practice fits. */
const least = 1.25
const usual = 1.5

export const seriesFuseLow = panelRule({
  id: 'series-fuse-low',
  severity: 'warning',
  reason: 'A fuse below 1.25 Isc would blow in bright sun, so the sheet cannot mean it.',
  source:
    'US practice, 1.25 Isc (NEC 690.8; from memory); IEC 62548 practice, a string fuse of 1.5 Isc and more (as quoted by a worked example)',
  messages: {
    low: 'The series fuse {fuse} is below {part} times Isc {isc}',
  },

  check({ limits: { series_fuse: fuse }, stc: { isc } }) {
    if (!fuse || !isc || fuse.value <= 0 || fuse.value >= usual * isc.value) return null
    const blows = fuse.value < least * isc.value
    return {
      say: 'low',
      with: { fuse, part: blows ? least : usual, isc },
      suspects: [fuse, isc],
      severity: blows ? 'warning' : 'information',
    }
  },
})
