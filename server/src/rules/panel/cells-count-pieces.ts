import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

export const cellsCountPieces = panelRule({
  id: 'cells-count-pieces',
  severity: 'warning',
  reason:
    'A half-cut module has twice as many pieces as cells in series; the pieces in the count halve the voltage per cell.',
  source: 'common practice, no source; of 17 126 listed counts 305 count the pieces',
  messages: {
    found: 'Voc {voc} over {cells} cells is only {perCell} per cell',
    halfCutPieces: 'half-cut pieces counted as cells',
  },

  check(panel) {
    const { voc } = panel.stc
    const { in_series: cells } = panel.cells
    if (!voc || !cells || cells.value <= 0 || !isCrystalline(panel) || cells.value % 2 !== 0) return null
    const perCell = voc.value / cells.value
    if (!inside(perCell, [0.27, 0.39])) return null
    return {
      say: 'found',
      with: { voc, cells, perCell: figure(perCell, 'V') },
      suspects: [cells, voc],
      correction: {
        field: cells,
        text: String(cells.value / 2),
        why: { say: 'halfCutPieces' },
        certainty: 'guess',
      },
    }
  },
})
