import type { Derived } from './derived.ts'
import { cells, voc } from './inputs.ts'

export const vocPerCell: Derived = {
  id: 'voc_per_cell',
  label: 'Voc per cell',
  unit: 'V',
  formula: 'Voc / cells in series',
  source: 'cells in series carry one current and add their voltages',
  pointer: '/cells/in_series',
  needs: [voc, cells],
  compute: (v, n) => v / n,
}
