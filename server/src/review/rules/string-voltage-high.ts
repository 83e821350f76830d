import { short } from '../../rules/band.ts'
import { fewerInSeries } from '../fewer-in-series.ts'
import { elsewhere, placeOf } from '../rule.ts'
import { isUniform } from '../strings.ts'
import type { ReviewRule } from '../rule.ts'

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
      if (!limit || voc === null || !place || voc <= 0.95 * limit.value) return []
      const each = voc / (series?.value ?? 1)
      const most = Math.floor(limit.value / each)
      const over = limit.value < voc
      const what = `${series?.text ?? 1} in series: ${short(voc)} V at ${system.coldest.value} °C`
      const best =
        most >= 1
          ? `; at most ${most} in series (${short(most * each)} V)`
          : '; no string of these panels is low enough'
      const correction =
        over && isUniform(array)
          ? fewerInSeries(array, most, (n) => `${short(n * each)} V at ${system.coldest.value} °C`)
          : undefined
      return [
        {
          message: over
            ? `${what} exceeds the controller's ${limit.text}${best}`
            : `${what} leaves less than 5 % below the controller's ${limit.text}`,
          suspects: [place] as const,
          severity: over ? ('error' as const) : ('warning' as const),
          ...elsewhere(array.controller, limit),
          ...(correction && { correction }),
        },
      ]
    })
  },
}
