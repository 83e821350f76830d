import { panelRule } from '../about.ts'

export const frameWeightHigh = panelRule({
  id: 'frame-weight-high',
  severity: 'information',
  reason: 'A frame that weighs several times the panel is a total, or another unit.',
  source: 'common practice, no source: 1 to 4 kg per panel',
  messages: {
    high: 'The mounting frame of {frame} weighs more than three times the panel ({weight})',
  },

  check({ mounting_frame, weight }) {
    const frame = mounting_frame.weight
    if (!frame || !weight || weight.value <= 0 || frame.value <= 3 * weight.value) return null
    return {
      say: 'high',
      with: { frame, weight },
      suspects: [frame, weight],
    }
  },
})
