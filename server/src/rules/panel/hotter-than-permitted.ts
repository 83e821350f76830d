import type { PanelRule } from '../about.ts'
import { cellTemperatureHot } from '../../values/cell-temperature-hot.ts'
import { derive } from '../../values/derived.ts'
import { mountingOf } from '../../values/site.ts'

export const hotterThanPermitted: PanelRule = {
  id: 'hotter-than-permitted',
  severity: 'information',
  reason:
    'Glued down on a hot day the cells pass what the maker permits; that costs the warranty and the panel ages faster.',
  source: 'installed NOCT after Fuentes, SAND85-0330 (1987)',

  check(panel, { site }) {
    const range = panel.limits.operating_temperature
    if (range?.quantity.upper === undefined || range.quantity.upper < 60) return null
    const hot = derive(cellTemperatureHot, panel, site).value
    if (hot === null || hot <= range.quantity.upper) return null
    return {
      message: `Mounted ${mountingOf(panel, site)}, the cells reach ${Math.round(hot)} °C on a day of ${site.hottest} °C, above the permitted ${range.quantity.upper} °C`,
      suspects: [range],
    }
  },
}
