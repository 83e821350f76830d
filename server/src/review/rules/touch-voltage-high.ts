import { short } from '../../rules/band.ts'
import { placeOf } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const touchVoltageHigh: ReviewRule = {
  id: 'touch-voltage-high',
  severity: 'information',
  reason:
    'Up to about 60 V direct current can usually be touched, less where it is wet; boats and vans are wet, metallic and cramped.',
  source: 'limit of extra-low voltage, IEC 60364-4-41 (from memory)',

  check({ system, coldest, arrays }, figures) {
    if (system.kind?.value === 'cabin' || !system.kind) return null
    return arrays.flatMap((array, i) => {
      const voc = figures.arrays[i]?.voc_cold_v ?? null
      const place = placeOf(array)
      if (voc === null || voc <= 60 || !place) return []
      return [
        {
          message: `The string reaches ${short(voc)} V at ${coldest.value} °C, above the 60 V that can usually be touched`,
          suspects: [place] as const,
        },
      ]
    })
  },
}
