import type { PanelRule } from '../about.ts'
import { short } from '../band.ts'

export const seriesFuseHigh: PanelRule = {
  id: 'series-fuse-high',
  severity: 'information',
  reason: 'A series fuse far above Isc protects nothing; a digit may be too many.',
  source: 'common practice, no source: 1.5 to 2.6 times Isc',

  check({ limits: { series_fuse: fuse }, stc: { isc } }) {
    if (!fuse || !isc || isc.value < 2 || fuse.value <= 4 * isc.value) return null
    return {
      message: `The series fuse ${fuse.text} is ${short(fuse.value / isc.value)} times Isc ${isc.text}`,
      suspects: [fuse, isc],
    }
  },
}
