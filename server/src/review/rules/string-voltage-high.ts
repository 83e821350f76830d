import { short } from '../../rules/band.ts'
import { obstacle, rewired, wiringsThatWork, type Wiring } from '../rewire.ts'
import { elsewhere, placeOf } from '../rule.ts'
import { isUniform } from '../strings.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

/** Common practice, no source. */
const margin = 0.95

export const stringVoltageHigh: ReviewRule = {
  id: 'string-voltage-high',
  severity: 'error',
  reason: 'Panels give their highest voltage on a cold bright morning, and above its limit a controller is destroyed.',
  source:
    'coefficient method of US and IEC practice (NEC 690.7, IEC 62548; from memory); 5 % of margin is common practice, no source',

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const limit = array.controller?.record.input.max_voltage
      const voc = figures.arrays[i]?.voc_cold_v ?? null
      const series = array.entry.wiring.in_series
      const place = placeOf(array)
      if (!limit || voc === null || !place || voc <= margin * limit.value) return []
      const over = limit.value < voc
      const what = `${series?.text ?? 1} in series: ${short(voc)} V at ${system.coldest.value} °C`
      const own = figures.arrays[i]!
      const hasMargin = ({ cold }: Wiring) => cold <= margin * limit.value
      const works = wiringsThatWork(system, array, own).filter((one) => one.series < (series?.value ?? 1))
      const fewer = over ? [...works].reverse().sort((a, b) => Number(hasMargin(b)) - Number(hasMargin(a))) : []
      const correction = fewer
        .map((one) => rewired(array, own, one, system.coldest.value))
        .find((one) => one !== undefined)
      const most = works.at(-1)
      const best = correction
        ? ''
        : most
          ? `; ${most.series} in series would give ${short(most.cold)} V${obstacle(array, own, most.series) ?? ''}`
          : isUniform(array)
            ? '; no string of these panels suits this controller'
            : ''
      return [
        {
          message: over
            ? `${what} exceeds the controller's ${said(limit)}${best}`
            : `${what}, limit ${said(limit)}: only ${short(100 * (1 - voc / limit.value))} % of margin, where 5 % is usual`,
          suspects: [place] as const,
          severity: over ? ('error' as const) : ('warning' as const),
          ...elsewhere(array.controller, limit),
          ...(correction && { correction }),
        },
      ]
    })
  },
}
