import type { Bundle } from '../wording/bundle.ts'
import { joined, phraseInWords } from '../wording/phrase.ts'

/** Words as a sentence lists them: May, June and July. */
export const joinWords = (words: readonly string[], bundle?: Bundle): string => phraseInWords(joined(words), bundle)
