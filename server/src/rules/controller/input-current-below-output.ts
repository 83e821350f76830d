import { controllerRule } from '../over.ts'

export const inputCurrentBelowOutput = controllerRule({
  id: 'input-current-below-output',
  severity: 'information',
  reason:
    'Converting down raises the current, but makers state the limit of the input above that of the output, so these may be exchanged.',
  source: 'common practice, no source',
  messages: {
    found: "The input takes {isc} and the output gives {out}; the larger is usually the input's",
  },

  check({ type, input: { max_short_circuit_current: isc }, output: { max_current: out } }) {
    if (type?.value !== 'mppt' || !isc || !out || isc.value >= out.value) return null
    return {
      say: 'found',
      with: { isc, out },
      suspects: [isc, out],
    }
  },
})
