import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

type Band = readonly [number, number]

/**
 * Volts per cell, also of strips that are cut in two and both counted; amorphous silicon with one, two and three junctions.
 * Gallium arsenide 1.07 to 1.13 V. @source M. A. Green et al., "Solar cell efficiency tables", Progress in Photovoltaics (from memory)
 */
const usual: Readonly<Record<string, readonly Band[]>> = {
  cigs: [[0.45, 0.78]],
  cdte: [
    [0.35, 0.46],
    [0.7, 0.92],
  ],
  'a-si': [
    [0.4, 0.53],
    [0.6, 1.05],
    [1.25, 1.76],
    [1.85, 2.35],
  ],
  gaas: [[1, 1.17]],
  'thin-film': [
    [0.34, 1.17],
    [1.25, 1.76],
    [1.85, 2.35],
  ],
}

export const thinFilmVocPerCellUnusual = panelRule({
  id: 'thin-film-voc-per-cell-unusual',
  severity: 'warning',
  reason:
    'Every thin-film cell of one material gives about the same voltage, so Voc and the cell count check each other.',
  source:
    'open module ratings of a public list, 2015 to 2022: 155 thin-film modules by material; what is granted beside, 5 to 15 %, is estimated',
  messages: {
    unusual: 'Voc {voc} over {cells} cells is {perCell} per cell, where {bands} V is usual',
    band: '{low} to {high}',
  },

  check(panel) {
    const { voc } = panel.stc
    const { in_series: cells, technology } = panel.cells
    const bands = technology && usual[technology.value]
    if (!voc || !cells || cells.value <= 0 || !bands) return null
    const perCell = voc.value / cells.value
    if (bands.some((band) => inside(perCell, band))) return null
    const list = bands.map(([low, high]) => ({ say: 'band', with: { low: figure(low), high: figure(high) } }))
    return {
      say: 'unusual',
      with: { voc, cells, perCell: figure(perCell, 'V'), bands: { list, last: 'or' } },
      suspects: [cells, voc],
    }
  },
})
