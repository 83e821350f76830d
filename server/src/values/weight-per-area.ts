import type { Derived } from './derived.ts'
import { length, weight, width } from './inputs.ts'

export const weightPerArea: Derived = {
  id: 'weight_per_area',
  label: 'weight per area',
  unit: 'kg/m2',
  formula: 'weight / (length x width)',
  source: 'geometry',
  pointer: '/weight',
  needs: [weight, length, width],
  compute: (m, l, w) => m / (l * w),
}
