import type { Derived } from './derived.ts'
import { isc } from './inputs.ts'

export const iscDesign: Derived = {
  id: 'isc_design',
  label: 'design current',
  unit: 'A',
  formula: '1.25 x Isc',
  source: 'US practice for irradiance above 1000 W/m2 (NEC 690.8; from memory)',
  pointer: '/stc/isc',
  needs: [isc],
  compute: (i) => 1.25 * i,
}
