import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

const usual = [0.49, 0.785] as const
const halfCut = [0.27, 0.39] as const

export const vocPerCellUnusual = panelRule({
  id: 'voc-per-cell-unusual',
  severity: 'warning',
  reason: 'Every silicon cell gives about the same open-circuit voltage, so Voc and the cell count check each other.',
  source: 'open module ratings of a public list, 2015 to 2022: 0.50 to 0.78 V per crystalline cell',
  messages: {
    unusual: 'Voc {voc} over {cells} cells is {perCell} per cell, where {value} to {value2} V is usual',
  },

  check(panel) {
    const { voc } = panel.stc
    const { in_series: cells } = panel.cells
    if (!voc || !cells || cells.value <= 0 || !isCrystalline(panel)) return null
    const perCell = voc.value / cells.value
    if (inside(perCell, usual) || perCell > 0.878 || inside(perCell, halfCut)) return null
    return {
      say: 'unusual',
      with: { voc, cells, perCell: figure(perCell, 'V'), value: usual[0], value2: usual[1] },
      suspects: [cells, voc],
    }
  },
})
