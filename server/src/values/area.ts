import type { Derived } from './derived.ts'
import { length, width } from './inputs.ts'

export const area: Derived = {
  id: 'area',
  label: 'area',
  unit: 'm2',
  formula: 'length x width',
  source: 'geometry; the whole outline, frame and border included',
  pointer: '/size/length',
  needs: [length, width],
  compute: (l, w) => l * w,
}
