import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

/**
 * mA/cm2. Of the open ratings 13 of 3 313 lie beyond the usual ones, and none beyond the credible ones. Sheets of small and of
 * folding panels leave much area beside the cells; a bifacial module may be rated with light on its back.
 */
const usual = [20, 44] as const
const credible = [11, 50] as const
/** m2 */
const small = 0.7

/**
 * Current through a square centimetre of cells, in mA/cm2. Strings side by side share the area and the current alike: of Ns x Np
 * cells each has the area A / (Ns Np) and the current Isc / Np, so that
 *
 *     Isc x Ns / A
 *
 * holds for any number of strings.
 */
export const densityOf = (isc: number, cells: number, area: number): number => (isc * cells) / area / 10

export const currentDensityUnusual = panelRule({
  id: 'current-density-unusual',
  severity: 'warning',
  reason: 'A cell cannot give more current than sunlight brings photons; the cell count or the area is wrong.',
  source:
    'detailed balance for silicon in AM1.5G: 43.8 mA/cm2; open module ratings of a public list, 2015 to 2022: 20.5 to 42.6 mA/cm2 from the 0.5th to the 99.5th percentile of crystalline rows, 37.8 the median of half-cut ones',
  messages: {
    unusual: 'Isc {isc} is {density} in {cells} cells on {length} by {width}; {value} to {value2} is usual',
  },

  check(panel) {
    const { isc } = panel.stc
    const { in_series: cells, parallel_strings: strings } = panel.cells
    const { length, width } = panel.size
    if (!isc || !cells || !length || !width || !isCrystalline(panel)) return null
    const area = length.value * width.value
    if (area <= 0) return null
    const density = densityOf(isc.value, cells.value, area)
    const isSmall = area < small || panel.construction?.value === 'folding'
    const low = isSmall ? credible[0] : usual[0]
    // half-cut modules are of modern cells: none of the 766 open ones that are no small panels lies below 20
    const least = strings && strings.value > 1 ? low : credible[0]
    const high = panel.bifacial?.value ? credible[1] : usual[1]
    if (inside(density, [low, high])) return null
    return {
      say: 'unusual',
      with: { isc, cells, length, width, density: figure(density, 'mA/cm2'), value: usual[0], value2: usual[1] },
      suspects: [cells, isc, length, width],
      severity: inside(density, [least, credible[1]]) ? 'information' : 'warning',
    }
  },
})
