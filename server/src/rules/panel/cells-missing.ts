import { missingField } from '../missing-field.ts'
import { isCrystalline } from '../../values/technology.ts'

export const cellsMissing = missingField({
  id: 'cells-missing',
  reason: 'Without the number of cells in series Voc cannot be checked against it.',
  field: '/cells/in_series',
  message: 'No cells in series: Voc cannot be checked against their number',
  // thin film has no usual voltage of a cell to check against
  shownAt: (panel) => (isCrystalline(panel) || !panel.cells.technology ? panel.stc.voc : undefined),
})
