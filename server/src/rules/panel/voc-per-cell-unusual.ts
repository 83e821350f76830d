import type { PanelRule } from '../about.ts'
import { inside, short } from '../band.ts'
import { isCrystalline } from '../technology.ts'

const usual = [0.49, 0.785] as const
const halfCut = [0.27, 0.39] as const

export const vocPerCellUnusual: PanelRule = {
  id: 'voc-per-cell-unusual',
  severity: 'warning',
  reason: 'Every silicon cell gives about the same open-circuit voltage, so Voc and the cell count check each other.',
  source: 'open module ratings of a public list, 2015 to 2022: 0.50 to 0.78 V per crystalline cell',

  check(panel) {
    const { voc } = panel.stc
    const { in_series: cells } = panel.cells
    if (!voc || !cells || cells.value <= 0 || !isCrystalline(panel)) return null
    const perCell = voc.value / cells.value
    if (inside(perCell, usual) || perCell > 0.878 || inside(perCell, halfCut)) return null
    return {
      message: `Voc ${voc.text} over ${cells.text} cells is ${short(perCell)} V per cell, where ${usual[0]} to ${usual[1]} V is usual`,
      suspects: [cells, voc],
    }
  },
}
