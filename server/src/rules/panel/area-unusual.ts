import type { PanelRule } from '../about.ts'
import { inside, short } from '../band.ts'

export const areaUnusual: PanelRule = {
  id: 'area-unusual',
  severity: 'warning',
  reason: 'Panels lie between a sheet of paper and a door; else a side is in another unit.',
  source: 'common practice, no source',

  check({ size: { length, width } }) {
    if (!length || !width || length.value <= 0 || width.value <= 0) return null
    const area = length.value * width.value
    if (inside(area, [0.01, 6.5])) return null
    return { message: `${length.text} by ${width.text} is an area of ${short(area)} m2`, suspects: [length, width] }
  },
}
