import type { Candidate } from './candidate.ts'

/** A candidate and how it fares. */
export interface Tried {
  readonly candidate: Candidate
  /** Logarithm of its chance against that of the record as typed being right, before the odds of any slip at all. */
  readonly score: number
}
