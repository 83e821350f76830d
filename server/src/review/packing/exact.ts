import { isFree, overlap, type Box, type Grid } from './surface.ts'

/**
 * Searches all layouts for one of more than `known` panels. Any layout can be pushed towards the corner until each panel
 * touches something, so only such places are tried, from left to right, and a branch is left when the free area cannot better the best.
 *
 * @param xs, ys  where a panel can start, ascending
 * @param enough  stop at so many
 * @param steps   give up after so many
 * @returns the best layout found, null where none is better than what is known; `proven` is false where the search gave up
 */
export function searchAll(
  grid: Grid,
  { xs, ys }: { readonly xs: readonly number[]; readonly ys: readonly number[] },
  { known, enough, steps: limit }: { readonly known: number; readonly enough: number; readonly steps: number },
): { readonly boxes: readonly Box[] | null; readonly proven: boolean } {
  const points = xs.flatMap((x, column) => ys.flatMap((y) => pointAt(x, y, column)))
  const area = grid.orientations[0]!.dx * grid.orientations[0]!.dy
  const free = xs.map((x) => freeArea(grid, x))
  const placed: Box[] = []
  let best: readonly Box[] | null = null
  let most = known
  let steps = 0
  search(0)
  return { boxes: best, proven: steps < limit || enough <= most }

  function search(from: number): void {
    if (most < placed.length) [best, most] = [[...placed], placed.length]
    for (let i = from; i < points.length; i++) {
      if (limit <= ++steps || enough <= most || placed.length + room(i) <= most) return
      for (const box of points[i]!.boxes) {
        if (placed.some((other) => overlap(box, other)) || !touchesLeft(box)) continue
        placed.push(box)
        search(i + 1)
        placed.pop()
        if (limit <= steps || enough <= most) return
      }
    }
  }

  /** How many more could lie at the point or right of it, by area alone. */
  function room(i: number): number {
    const { x, column } = points[i]!
    let left = free[column]!
    for (const box of placed) left -= Math.max(0, box.x + box.dx - x) * box.dy
    return Math.floor(left / area)
  }

  /** A point with the panels that can start there on the bare surface; none is no point. */
  function pointAt(x: number, y: number, column: number) {
    const boxes = grid.orientations.map((way) => ({ x, y, ...way })).filter((box) => isFree(grid, box))
    return boxes.length > 0 ? [{ x, column, boxes }] : []
  }

  function touchesLeft({ x, y, dy }: Box): boolean {
    return (
      x === 0 ||
      grid.blocked.some((k) => k.x1 === x && k.y0 < y + dy && y < k.y1) ||
      placed.some((p) => p.x + p.dx === x && p.y < y + dy && y < p.y + p.dy)
    )
  }
}

/** Area right of x that no keep-out takes; of keep-outs that overlap only the first counts. */
function freeArea({ length, width, blocked }: Grid, x: number): number {
  return blocked.reduce(
    (left, k, i) => {
      const apart = blocked.slice(0, i).every((o) => o.x1 <= k.x0 || k.x1 <= o.x0 || o.y1 <= k.y0 || k.y1 <= o.y0)
      const across = Math.min(length, k.x1) - Math.max(x, k.x0)
      const high = Math.min(width, k.y1) - Math.max(0, k.y0)
      return apart ? left - Math.max(0, across) * Math.max(0, high) : left
    },
    (length - x) * width,
  )
}
