import type { PanelRule } from '../about.ts'
import { percent } from '../words.ts'

export const toleranceUnusual: PanelRule = {
  id: 'tolerance-unusual',
  severity: 'information',
  reason:
    'A tolerance reads from the lower to the upper deviation; a lower one above zero, or far below, is worth a look.',
  source: 'common practice, no source',

  check({ stc: { tolerance, pmax } }) {
    if (!tolerance) return null
    const base = tolerance.quantity.dimension === 'power' ? (pmax?.value ?? NaN) : 1
    const low = tolerance.value / base
    const high = (tolerance.quantity.upper ?? tolerance.value) / base
    if (Number.isNaN(low) || (low >= -0.1 && low <= 0 && high >= 0 && high <= 0.1)) return null
    return {
      message: `The tolerance ${tolerance.text} reaches from ${percent(low)} to ${percent(high)}, where -10 % to +10 % with 0 between is usual`,
      suspects: [tolerance],
    }
  },
}
