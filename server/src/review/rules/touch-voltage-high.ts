import { figure } from '../../findings/message.ts'
import { placeOf } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const touchVoltageHigh = reviewRule({
  id: 'touch-voltage-high',
  severity: 'information',
  reason:
    'Up to about 60 V direct current can usually be touched, less where it is wet; boats and vans are wet, metallic and cramped.',
  source: 'limit of extra-low voltage, IEC 60364-4-41 (from memory)',
  messages: {
    high: 'The string reaches {voc} at {coldest}, above the 60 V that can usually be touched',
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
          with: { voc: figure(voc, 'V'), coldest: { value: coldest.value, unit: '°C' } },
          suspects: [place] as const,
        },
      ]
    })
  },
})
