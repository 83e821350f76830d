import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { isCrystalline } from '../../values/technology.ts'

export const vocPerCellImpossible = panelRule({
  id: 'voc-per-cell-impossible',
  severity: 'error',
  reason:
    'No silicon cell reaches this voltage in sunlight; cells are missing from the count or Voc has a digit too many.',
  source: 'detailed balance (Shockley and Queisser 1961) for the band gap of silicon, 1.12 eV, AM1.5G: 0.878 V',
  messages: {
    impossible: 'Voc {voc} over {cells} cells is {voltage} per cell, above the 0.878 V that silicon can reach',
  },

  check(panel) {
    const { voc } = panel.stc
    const { in_series: cells } = panel.cells
    if (!voc || !cells || cells.value <= 0 || !isCrystalline(panel) || voc.value / cells.value <= 0.878) return null
    return {
      say: 'impossible',
      with: { voc, cells, voltage: figure(voc.value / cells.value, 'V') },
      suspects: [cells, voc],
    }
  },
})
