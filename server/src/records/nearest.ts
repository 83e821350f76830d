import { editDistance } from '../quantities/edit-distance.ts'
import { synonymOf } from './synonyms.ts'

/** The word of `known` that was most likely meant: a synonym, the same letters, or at most two slips of the finger. */
export function nearest(word: string, known: readonly string[]): string | null {
  const typed = plainly(word)
  const same = known.find((k) => plainly(k) === typed)
  if (same) return same
  const synonym = synonymOf(typed, known)
  if (synonym) return synonym
  const limit = typed.length < 4 ? 1 : 2
  const ranked = known
    .filter((k) => Math.abs(k.length - typed.length) <= limit)
    .map((k) => ({ k, d: editDistance(typed, plainly(k)) }))
    .filter(({ d }) => d <= limit)
    .sort((a, b) => a.d - b.d)
  const [first, second] = ranked
  return first && (!second || first.d < second.d) ? first.k : null
}

const plainly = (word: string) => word.toLowerCase().replaceAll(/[- ]/g, '_')
