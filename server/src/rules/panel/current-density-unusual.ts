import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../technology.ts'

export const currentDensityUnusual = panelRule({
  id: 'current-density-unusual',
  severity: 'warning',
  reason: 'A cell cannot give more current than sunlight brings photons; the cell count or the area is wrong.',
  source:
    'detailed balance for silicon in AM1.5G: 43.8 mA/cm2; open module ratings of a public list, 2015 to 2022: 12 to 41 mA/cm2',
  messages: {
    unusual: 'Isc {isc} from {cells} cells on {length} by {width} is {density}, where 12 to 41 is usual',
  },

  check(panel) {
    const { isc } = panel.stc
    const { in_series: cells, parallel_strings: strings } = panel.cells
    const { length, width } = panel.size
    if (!isc || !cells || !length || !width || !isCrystalline(panel) || panel.bifacial?.value) return null
    const area = length.value * width.value
    if (area <= 0) return null
    const density = (isc.value * cells.value) / ((strings?.value ?? 1) * area) / 10
    if (inside(density, [9, 50])) return null
    return {
      say: 'unusual',
      with: { isc, cells, length, width, density: figure(density, 'mA/cm2') },
      suspects: [cells, isc, length, width],
    }
  },
})
