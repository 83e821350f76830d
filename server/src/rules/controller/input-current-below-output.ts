import type { Controller } from '../../records/records.generated.ts'
import type { Rule } from '../rule.ts'

export const inputCurrentBelowOutput: Rule<Controller> = {
  id: 'input-current-below-output',
  severity: 'information',
  reason:
    'Converting down raises the current, but makers state the limit of the input above that of the output, so these may be exchanged.',
  source: 'common practice, no source',

  check({ type, input: { max_short_circuit_current: isc }, output: { max_current: out } }) {
    if (type?.value !== 'mppt' || !isc || !out || isc.value >= out.value) return null
    return {
      message: `The input takes ${isc.text} and the output gives ${out.text}; the larger is usually the input's`,
      suspects: [isc, out],
    }
  },
}
