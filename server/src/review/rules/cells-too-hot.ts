import { celsius, whole } from '../../findings/message.ts'
import { cellTemperatureHot } from '../../values/cell-temperature-hot.ts'
import { derive } from '../../values/derived.ts'
import { mountingOf } from '../../values/site.ts'
import { siteAt } from '../panel-at.ts'
import { elsewhere } from '../rule.ts'
import { reviewRule } from '../rule.ts'

/** K. The model of cell temperature is no better than this: common practice, no source. */
const uncertain = 6

const inWords = {
  bonded: { say: 'bonded' },
  canvas: { say: 'canvas' },
  standoff: { say: 'standoff' },
  'open rack': { say: 'openRack' },
} as const

export const cellsTooHot = reviewRule({
  id: 'cells-too-hot',
  severity: 'warning',
  reason: 'Hotter than its maker permits a panel ages fast and loses its warranty.',
  source: 'Ross 1981 with the installed-NOCT corrections of Fuentes, SAND85-0330 (1987)',
  messages: {
    bonded: 'Bonded',
    canvas: 'On canvas',
    standoff: 'On standoffs',
    openRack: 'On an open rack',
    hot: '{mounting}, the cells reach about {hot} on a day of {hottest} (limit {upper}){cooler}',
    cooler: '; on standoffs about {cells}',
  },

  check(system) {
    return system.arrays.flatMap(({ panels }) =>
      panels.flatMap((one) => {
        const range = one.panel?.record.limits.operating_temperature
        const place = one.entry.surface ?? one.entry.panel.id
        const isUnknown = one.entry.surface !== undefined && one.surface === undefined
        if (!one.panel || !place || isUnknown || range?.quantity.upper === undefined) return []
        const site = siteAt(system, one)
        const hot = derive(cellTemperatureHot, one.panel.record, site).value
        const { upper } = range.quantity
        if (hot === null || hot <= upper + 0.5) return []
        const mounting = mountingOf(one.panel.record, site)
        const cells = derive(cellTemperatureHot, one.panel.record, { ...site, mounting: 'standoff' }).value ?? hot
        return [
          {
            say: 'hot',
            with: {
              mounting: inWords[mounting],
              hot: whole(hot, '°C'),
              hottest: celsius(site.hottest),
              upper: celsius(upper),
              cooler: cells < hot - 1 ? { say: 'cooler', with: { cells: whole(cells, '°C') } } : null,
            },
            suspects: [place],
            severity: hot < upper + uncertain ? ('information' as const) : ('warning' as const),
            ...elsewhere(one.panel, range),
          },
        ]
      }),
    )
  },
})
