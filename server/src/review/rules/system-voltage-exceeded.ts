import { celsius, figure } from '../../findings/message.ts'
import type { Panel } from '../../records/records.generated.ts'
import type { Used } from '../resolved.ts'
import { elsewhere, placeOf } from '../rule.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

const volts = ({ record }: Used<Panel>) => record.limits.system_voltage?.value ?? Infinity

export const systemVoltageExceeded = reviewRule({
  id: 'system-voltage-exceeded',
  severity: 'error',
  reason: 'Above the voltage that a panel is built for, its insulation may fail and its frame or the boat become live.',
  source: 'IEC 61730, maximum system voltage (from memory)',
  messages: {
    thePanel: 'the panel',
    exceeded: '{voc} at {coldest} exceed the maximum system voltage of {name}, {limit}',
  },

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const voc = figures.arrays[i]?.voc_cold_v ?? null
      const place = placeOf(array)
      const weakest = array.panels.flatMap(({ panel }) => (panel?.record.limits.system_voltage ? [panel] : []))
      const low = weakest.reduce<(typeof weakest)[number] | undefined>(
        (a, b) => (!a || volts(b) < volts(a) ? b : a),
        undefined,
      )
      if (voc === null || !place || !low || voc <= volts(low)) return []
      const limit = low.record.limits.system_voltage!
      return [
        {
          say: 'exceeded',
          with: {
            voc: figure(voc, 'V'),
            coldest: celsius(system.coldest.value),
            name: low.record.name ?? { say: 'thePanel' },
            limit: said(limit),
          },
          suspects: [place],
          ...elsewhere(low, limit),
        },
      ]
    })
  },
})
