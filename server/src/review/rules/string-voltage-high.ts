import { celsius, estimate, figure } from '../../findings/message.ts'
import { obstacle, rewired, wiringsThatWork, type Wiring } from '../rewire.ts'
import { elsewhere, placeOf } from '../rule.ts'
import { isUniform } from '../strings.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

/** Common practice, no source. */
const margin = 0.95

export const stringVoltageHigh = reviewRule({
  id: 'string-voltage-high',
  severity: 'error',
  reason: 'Panels give their highest voltage on a cold bright morning, and above its limit a controller is destroyed.',
  source:
    'coefficient method of US and IEC practice (NEC 690.7, IEC 62548; from memory); 5 % of margin is common practice, no source',
  messages: {
    inSeriesAt: '{series} in series: {voc} at {coldest}',
    inSeriesWould: '; {series} in series would give {cold}{array}',
    noStringOf: '; no string of these panels suits this controller',
    inSeries: "{voc} at {coldest} exceeds the controller's {limit}",
    exceedsTheControllers: "{what} exceeds the controller's {limit}{best}",
    limitOnlyOf: '{what}, limit {limit}: only {share} of margin, where 5 % is usual',
  },

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const limit = array.controller?.record.input.max_voltage
      const voc = figures.arrays[i]?.voc_cold_v ?? null
      const series = array.entry.wiring.in_series
      const place = placeOf(array)
      if (!limit || voc === null || !place || voc <= margin * limit.value) return []
      const over = limit.value < voc
      const cold = { voc: figure(voc, 'V'), coldest: celsius(system.coldest.value) }
      const what = { say: 'inSeriesAt', with: { series: series ?? 1, ...cold } }
      const own = figures.arrays[i]!
      const hasMargin = ({ cold }: Wiring) => cold <= margin * limit.value
      const works = wiringsThatWork(system, array, own).filter((one) => one.series < (series?.value ?? 1))
      const fewer = over ? [...works].reverse().sort((a, b) => Number(hasMargin(b)) - Number(hasMargin(a))) : []
      const correction = fewer
        .map((one) => rewired(array, own, one, system.coldest.value))
        .find((one) => one !== undefined)
      const most = works.at(-1)
      const best = correction
        ? null
        : most
          ? {
              say: 'inSeriesWould',
              with: {
                series: most.series,
                cold: figure(most.cold, 'V'),
                array: obstacle(array, own, most.series) ?? null,
              },
            }
          : isUniform(array)
            ? { say: 'noStringOf' }
            : null
      return [
        {
          ...(correction
            ? { say: 'inSeries', with: { ...cold, limit: said(limit) } }
            : over
              ? { say: 'exceedsTheControllers', with: { what, limit: said(limit), best } }
              : {
                  say: 'limitOnlyOf',
                  with: { what, limit: said(limit), share: estimate(100 * (1 - voc / limit.value), '%') },
                }),
          suspects: [place],
          severity: over ? ('error' as const) : ('warning' as const),
          ...elsewhere(array.controller, limit),
          ...(correction && { correction }),
        },
      ]
    })
  },
})
