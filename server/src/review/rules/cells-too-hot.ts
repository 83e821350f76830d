import { whole } from '../../findings/message.ts'
import { cellTemperatureHot } from '../../values/cell-temperature-hot.ts'
import { derive } from '../../values/derived.ts'
import { mountingOf } from '../../values/site.ts'
import { siteAt } from '../panel-at.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const cellsTooHot = reviewRule({
  id: 'cells-too-hot',
  severity: 'warning',
  reason: 'Hotter than its maker permits a panel ages fast and loses its warranty.',
  source: 'Ross 1981 with the installed-NOCT corrections of Fuentes, SAND85-0330 (1987)',
  messages: {
    hot: 'Mounted {record}, the cells reach {hot} on a day of {hottest} °C, above the permitted {upper} °C',
  },

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
            say: 'hot',
            with: {
              record: mountingOf(one.panel.record, site),
              hot: whole(hot, '°C'),
              hottest: site.hottest,
              upper: range.quantity.upper,
            },
            suspects: [place],
            ...elsewhere(one.panel, range),
          },
        ]
      }),
    )
  },
})
