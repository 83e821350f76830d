import type { Derived } from './derived.ts'
import { length, pmax, width } from './inputs.ts'

export const powerPerArea: Derived = {
  id: 'power_per_area',
  label: 'power per area',
  unit: 'W/m2',
  formula: 'Pmax / (length x width)',
  source: 'geometry',
  pointer: '/size/width',
  needs: [pmax, length, width],
  compute: (p, l, w) => p / (l * w),
}
