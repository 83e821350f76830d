import { short } from '../../rules/band.ts'
import { elsewhere, placeOf } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const shortCircuitCurrentHigh: ReviewRule = {
  id: 'short-circuit-current-high',
  severity: 'error',
  reason:
    'In bright sun an array gives a quarter more than its sheet says; above its limit a controller can be damaged.',
  source: 'US National Electrical Code 690.8 (as quoted by trade articles)',

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const limit = array.controller?.record.input.max_short_circuit_current
      const isc = figures.arrays[i]?.isc_design_a ?? null
      const place = array.entry.wiring.in_parallel ?? placeOf(array)
      if (!limit || isc === null || !place || isc <= limit.value) return []
      const strings = array.entry.wiring.in_parallel
      const most = Math.floor(limit.value / (isc / (strings?.value ?? 1)))
      return [
        {
          message: `${strings?.text ?? 1} strings: 1.25 x Isc is ${short(isc)} A and exceeds the controller's ${limit.text}${most >= 1 ? `; at most ${most} in parallel` : ''}`,
          suspects: [place] as const,
          ...elsewhere(array.controller, limit),
        },
      ]
    })
  },
}
