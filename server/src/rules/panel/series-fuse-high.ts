import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'

export const seriesFuseHigh = panelRule({
  id: 'series-fuse-high',
  severity: 'information',
  reason: 'A series fuse far above Isc protects nothing; a digit may be too many.',
  source: 'common practice, no source: 1.5 to 2.6 times Isc',
  messages: {
    high: 'The series fuse {fuse} is {value} times Isc {isc}',
  },

  check({ limits: { series_fuse: fuse }, stc: { isc } }) {
    if (!fuse || !isc || isc.value < 2 || fuse.value <= 4 * isc.value) return null
    return {
      say: 'high',
      with: { fuse, value: figure(fuse.value / isc.value), isc },
      suspects: [fuse, isc],
    }
  },
})
