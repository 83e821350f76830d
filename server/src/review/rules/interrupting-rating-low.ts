import { bankOf } from '../bank.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const interruptingRatingLow: ReviewRule = {
  id: 'interrupting-rating-low',
  severity: 'warning',
  reason:
    'A bank drives thousands of amperes into a short circuit, and a fuse that cannot break them bursts or goes on burning.',
  source:
    'ABYC E-11 asks for 5 kA at large lead-acid banks (from memory); 10 kA for lithium is common practice, no source',

  check(system) {
    const { interrupting_rating: rating } = system.system.battery
    const bank = bankOf(system)
    if (!rating || !bank) return null
    const least = bank.lithium ? 10_000 : 5_000
    if (least <= rating.value) return null
    return {
      message: `A fuse that breaks ${said(rating)} may burst at a ${bank.lithium ? 'lithium' : 'lead-acid'} bank, whose short circuit can exceed it; ${least / 1000} kA or more is usual`,
      suspects: [rating],
    }
  },
}
