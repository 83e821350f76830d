/**
 * Edits between two short texts; swapped neighbours count as one (Damerau 1964, restricted form).
 *
 * @param unlike  what one character in place of another costs; 1 by default, 0 for the same
 */
export function editDistance(
  a: string,
  b: string,
  unlike = (p: string, q: string): number => (p === q ? 0 : 1),
): number {
  let before: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const swap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? before[j - 2]! + 1 : Infinity
      row.push(Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + unlike(a[i - 1]!, b[j - 1]!), swap))
    }
    before = last
    last = row
  }
  return last[b.length]!
}
