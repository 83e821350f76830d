import { short } from '../../rules/band.ts'
import type { Measure } from '../../records/field.ts'
import { controllersOf, sumOf } from '../controllers.ts'
import type { ResolvedArray } from '../resolved.ts'
import { elsewhere, placeOf } from '../rule.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const shortCircuitCurrentHigh: ReviewRule = {
  id: 'short-circuit-current-high',
  severity: 'error',
  reason:
    'In bright sun an array gives a quarter more than its sheet says; above its limit a controller can be damaged.',
  source: 'US National Electrical Code 690.8 (as quoted by trade articles)',

  check(system, figures) {
    return controllersOf(system).flatMap((group) => {
      const [array] = group.arrays
      const limit = currentLimit(array)
      const isc = sumOf(group, (one) => figures.arrays[system.arrays.indexOf(one)]?.isc_design_a ?? null)
      const place = array.entry.wiring.in_parallel ?? placeOf(array)
      if (!limit || isc === null || !place || isc <= limit.value) return []
      const strings = sumOf(group, ({ entry }) => entry.wiring.in_parallel?.value ?? 1) ?? 1
      const most = Math.floor(limit.value / (isc / strings))
      const what = strings > 1 ? `${strings} strings: 1.25 x Isc is` : '1.25 x Isc is'
      return [
        {
          message: `${what} ${short(isc)} A and exceeds the controller's ${said(limit)}; ${most >= 1 ? `at most ${most} in parallel` : 'even one string is too much for it'}`,
          suspects: [place] as const,
          ...elsewhere(array.controller, limit),
        },
      ]
    })
  },
}

/** What the controller stands; one that only switches passes the panels' whole current, so its rating is the limit. */
function currentLimit({ controller }: ResolvedArray): Measure | undefined {
  const { input, output, type } = controller?.record ?? {}
  return input?.max_short_circuit_current ?? (type?.value === 'pwm' ? output?.max_current : undefined)
}
