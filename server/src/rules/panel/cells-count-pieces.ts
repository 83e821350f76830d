import type { PanelRule } from '../about.ts'
import { inside, short } from '../band.ts'
import { isCrystalline } from '../technology.ts'

export const cellsCountPieces: PanelRule = {
  id: 'cells-count-pieces',
  severity: 'warning',
  reason:
    'A half-cut module has twice as many pieces as cells in series; the pieces in the count halve the voltage per cell.',
  source: 'common practice, no source; of 17 126 listed counts 305 count the pieces',

  check(panel) {
    const { voc } = panel.stc
    const { in_series: cells } = panel.cells
    if (!voc || !cells || cells.value <= 0 || !isCrystalline(panel) || cells.value % 2 !== 0) return null
    const perCell = voc.value / cells.value
    if (!inside(perCell, [0.27, 0.39])) return null
    return {
      message: `Voc ${voc.text} over ${cells.text} cells is only ${short(perCell)} V per cell`,
      suspects: [cells, voc],
      correction: {
        field: cells,
        text: String(cells.value / 2),
        why: 'half-cut pieces counted as cells',
        certainty: 'guess',
      },
    }
  },
}
