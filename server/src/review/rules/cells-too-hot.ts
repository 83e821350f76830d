import { cellTemperatureHot } from '../../values/cell-temperature-hot.ts'
import { derive } from '../../values/derived.ts'
import { mountingOf } from '../../values/site.ts'
import { siteAt } from '../panel-at.ts'
import { elsewhere } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const cellsTooHot: ReviewRule = {
  id: 'cells-too-hot',
  severity: 'warning',
  reason: 'Hotter than its maker permits a panel ages fast and loses its warranty.',
  source: 'Ross 1981 with the installed-NOCT corrections of Fuentes, SAND85-0330 (1987)',

  check(system) {
    return system.arrays.flatMap(({ panels }) =>
      panels.flatMap((one) => {
        const range = one.panel?.record.limits.operating_temperature
        const place = one.entry.surface ?? one.entry.panel.id
        if (!one.panel || !place || range?.quantity.upper === undefined) return []
        const site = siteAt(system, one)
        const hot = derive(cellTemperatureHot, one.panel.record, site).value
        if (hot === null || hot <= range.quantity.upper + 0.5) return []
        return [
          {
            message: `Mounted ${mountingOf(one.panel.record, site)}, the cells reach ${Math.round(hot)} °C on a day of ${site.hottest} °C, above the permitted ${range.quantity.upper} °C`,
            suspects: [place] as const,
            ...elsewhere(one.panel, range),
          },
        ]
      }),
    )
  },
}
