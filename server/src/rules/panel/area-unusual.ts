import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

export const areaUnusual = panelRule({
  id: 'area-unusual',
  severity: 'warning',
  reason: 'Panels are larger than a sheet of paper and smaller than a garage door; else a side is in another unit.',
  source: 'common practice, no source',
  messages: {
    unusual: '{length} by {width} is {area}; panels are 0.01 to 6.5 m2',
  },

  check({ size: { length, width } }) {
    if (!length || !width || length.value <= 0 || width.value <= 0) return null
    const area = length.value * width.value
    if (inside(area, [0.01, 6.5])) return null
    return { say: 'unusual', with: { length, width, area: figure(area, 'm2') }, suspects: [length, width] }
  },
})
