import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'

export const toleranceUnusual = panelRule({
  id: 'tolerance-unusual',
  severity: 'information',
  reason:
    'A tolerance reads from the lower to the upper deviation; a lower one above zero, or far below, is worth a look.',
  source: 'common practice, no source',
  messages: {
    unusual: 'The tolerance {tolerance} reaches from {low} to {high}, where -10 % to +10 % with 0 between is usual',
  },

  check({ stc: { tolerance, pmax } }) {
    if (!tolerance) return null
    const base = tolerance.quantity.dimension === 'power' ? (pmax?.value ?? NaN) : 1
    const low = tolerance.value / base
    const high = (tolerance.quantity.upper ?? tolerance.value) / base
    if (Number.isNaN(low) || (low >= -0.1 && low <= 0 && high >= 0 && high <= 0.1)) return null
    return {
      say: 'unusual',
      with: { tolerance, low: percent(low), high: percent(high) },
      suspects: [tolerance],
    }
  },
})
