import { bankOf, leastRating } from '../bank.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const interruptingRatingLow = reviewRule({
  id: 'interrupting-rating-low',
  severity: 'warning',
  reason:
    'A bank drives thousands of amperes into a short circuit, and a fuse that cannot break them bursts or goes on burning.',
  source:
    'ABYC E-11 asks for 5 kA at large lead-acid banks (from memory); 10 kA for lithium is common practice, no source',
  messages: {
    lithium: 'lithium',
    leadAcid: 'lead-acid',
    low: 'A fuse that breaks {rating} may burst at a {part} bank, whose short circuit can exceed it; {least} kA or more is usual',
  },

  check(system) {
    const { interrupting_rating: rating } = system.system.battery
    const bank = bankOf(system)
    if (!rating || !bank) return null
    const least = leastRating(bank)
    if (least <= rating.value) return null
    return {
      say: 'low',
      with: {
        rating: said(rating),
        part: bank.lithium ? { say: 'lithium' } : { say: 'leadAcid' },
        least: least / 1000,
      },
      suspects: [rating],
    }
  },
})
