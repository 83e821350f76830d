import { celsius, figure } from '../../findings/message.ts'
import { placeOf } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const touchVoltageHigh = reviewRule({
  id: 'touch-voltage-high',
  severity: 'warning',
  reason:
    'Above 60 V direct current a shock can kill, and at less where it is wet; boats and vans are wet, metallic and cramped.',
  source: 'limit of extra-low voltage, IEC 60364-4-41 (from memory)',
  messages: {
    high: '{voc} at {coldest}: above 60 V DC a shock can kill, and at less where it is wet',
  },

  check({ system, coldest, arrays }, figures) {
    if (system.kind?.value === 'cabin' || !system.kind) return null
    return arrays.flatMap((array, i) => {
      const voc = figures.arrays[i]?.voc_cold_v ?? null
      const place = placeOf(array)
      if (voc === null || voc <= 60 || !place) return []
      return [
        {
          say: 'high',
          with: { voc: figure(voc, 'V'), coldest: celsius(coldest.value) },
          suspects: [place] as const,
        },
      ]
    })
  },
})
