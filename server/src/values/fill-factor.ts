import type { Derived } from './derived.ts'
import { isc, pmax, voc } from './inputs.ts'

export const fillFactor: Derived = {
  id: 'fill_factor',
  label: 'fill factor',
  unit: '1',
  formula: 'Pmax / (Voc x Isc)',
  source: 'definition of the fill factor, IEC 60904-1 (from memory)',
  pointer: '/stc/isc',
  needs: [pmax, voc, isc],
  compute: (p, v, i) => p / (v * i),
}
