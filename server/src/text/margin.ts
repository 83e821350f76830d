import type { Phrase } from '../wording/phrase.ts'
import type { Edit } from './span.ts'

/** What was copied along with the lines of a text: the signs of a diff, line numbers, the signs of a quoted mail. */
export interface Margin {
  readonly sentence: Phrase
  /** Ways to take it out, likeliest first. */
  readonly ways: readonly (readonly Edit[])[]
  /** Whether it is only meant where no complaint is left without it. */
  readonly isUnsure?: boolean
}
