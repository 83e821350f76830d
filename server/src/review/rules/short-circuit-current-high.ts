import { figure } from '../../findings/message.ts'
import type { Measure } from '../../records/field.ts'
import { controllersOf, sumOf } from '../controllers.ts'
import type { ResolvedArray } from '../resolved.ts'
import { elsewhere, placeOf } from '../rule.ts'
import { said } from '../said.ts'
import { arrayIsc } from '../strings.ts'
import { reviewRule } from '../rule.ts'

export const shortCircuitCurrentHigh = reviewRule({
  id: 'short-circuit-current-high',
  severity: 'error',
  reason:
    'In bright sun an array gives a quarter more than its sheet says; above its limit a controller can be damaged.',
  source: 'US National Electrical Code 690.8 (as quoted by trade articles)',
  messages: {
    strings: '{strings} strings give',
    oneString: 'One string gives',
    inBrightSun: '{isc} in bright sun (1.25 x Isc)',
    byTheSheet: '{isc} by the sheet (Isc), before bright sun adds a quarter',
    atMost: ', so at most {most}',
    notOne: ', so not even one string fits',
    high: '{what} {how}; the controller takes {limit}{fits}',
  },

  check(system, figures) {
    return controllersOf(system).flatMap((group) => {
      const [array] = group.arrays
      const limit = currentLimit(array)
      const isc = sumOf(group, (_, i) => figures.arrays[i]?.isc_design_a ?? null)
      const place = array.entry.wiring.in_parallel ?? placeOf(array)
      if (!limit || isc === null || !place || isc <= limit.value) return []
      const strings = sumOf(group, ({ entry }) => entry.wiring.in_parallel?.value ?? 1) ?? 1
      const most = Math.floor(limit.value / (isc / strings))
      const sheet = sumOf(group, arrayIsc)
      const isBelowSheet = sheet !== null && limit.value < sheet
      return [
        {
          say: 'high',
          with: {
            what: strings > 1 ? { say: 'strings', with: { strings } } : { say: 'oneString' },
            how: isBelowSheet
              ? { say: 'byTheSheet', with: { isc: figure(sheet, 'A') } }
              : { say: 'inBrightSun', with: { isc: figure(isc, 'A') } },
            limit: said(limit),
            fits: most >= 1 ? { say: 'atMost', with: { most } } : { say: 'notOne' },
          },
          suspects: [place],
          severity: isBelowSheet ? ('error' as const) : ('warning' as const),
          ...elsewhere(array.controller, limit),
        },
      ]
    })
  },
})

/** What the controller is rated for; one that only switches passes the panels' whole current, so its rating is the limit. */
function currentLimit({ controller }: ResolvedArray): Measure | undefined {
  const { input, output, type } = controller?.record ?? {}
  return input?.max_short_circuit_current ?? (type?.value === 'pwm' ? output?.max_current : undefined)
}
