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
    .map((k) => ({ k, d: distance(typed, plainly(k)) }))
    .filter(({ d }) => d <= limit)
    .sort((a, b) => a.d - b.d)
  const [first, second] = ranked
  return first && (!second || first.d < second.d) ? first.k : null
}

const plainly = (word: string) => word.toLowerCase().replaceAll(/[- ]/g, '_')

/** Edits between two words; swapped neighbours count as one (Damerau 1964, restricted form). */
export function distance(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)]
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let best = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, rows[i - 1]![j - 1]! + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, rows[i - 2]![j - 2]! + 1)
      row.push(best)
    }
    rows.push(row)
  }
  return rows[a.length]![b.length]!
}
