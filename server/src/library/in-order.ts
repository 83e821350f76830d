/** By UTF-16 unit, so that the order is the same on every machine. */
export const byPath = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)

/** Where a text is in a sorted list, or would be. */
export function indexIn(sorted: readonly string[], text: string): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle]! < text) low = middle + 1
    else high = middle
  }
  return low
}
