import { panelRule } from '../about.ts'

/** A */
const sizes: readonly number[] = [1, 2, 3, 4, 5, 6, 7.5, 8, 10, 12, 15, 16, 20, 25, 30, 32, 35, 40, 45, 50, 60]

export const seriesFuseSizeUnusual = panelRule({
  id: 'series-fuse-size-unusual',
  severity: 'information',
  reason: 'Fuses come in standard sizes.',
  source: 'common practice, no source; IEC 60269-6 sizes from memory',
  messages: {
    unusual: 'The series fuse {fuse} is no standard size',
  },

  check({ limits: { series_fuse: fuse } }) {
    if (!fuse || fuse.value <= 0 || sizes.includes(fuse.value)) return null
    return { say: 'unusual', with: { fuse }, suspects: [fuse] }
  },
})
