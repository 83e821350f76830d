import type { Derived } from './derived.ts'
import { length, pmax, width } from './inputs.ts'

export const efficiency: Derived = {
  id: 'efficiency',
  label: 'efficiency',
  unit: '1',
  formula: 'Pmax / (1000 W/m2 x length x width)',
  source: 'standard test conditions, IEC 60904-3 (from memory)',
  pointer: '/stc/pmax',
  needs: [pmax, length, width],
  compute: (p, l, w) => p / (1000 * l * w),
}
