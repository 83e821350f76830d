import { boxAt, isFree, overlap, type Box, type Grid } from './surface.ts'

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
  const points: Point[] = []
  for (let column = 0; column < xs.length; column++)
    for (let i = 0; i < ys.length; i++) addPoint(xs[column]!, ys[i]!, column)
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
      const { boxes } = points[i]!
      for (let n = 0; n < boxes.length; n++) {
        const box = boxes[n]!
        if (isTaken(box) || !touchesLeft(box)) continue
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
    for (let n = 0; n < placed.length; n++) {
      const box = placed[n]!
      if (x < box.x + box.dx) left -= (box.x + box.dx - x) * box.dy
    }
    return Math.floor(left / area)
  }

  /** Nothing where no panel can start. */
  function addPoint(x: number, y: number, column: number): void {
    const boxes: Box[] = []
    for (let w = 0; w < grid.orientations.length; w++) {
      const box = boxAt(x, y, grid.orientations[w]!)
      if (isFree(grid, box)) boxes.push(box)
    }
    if (boxes.length > 0) points.push({ x, column, boxes })
  }

  function isTaken(box: Box): boolean {
    for (let n = 0; n < placed.length; n++) if (overlap(box, placed[n]!)) return true
    return false
  }

  function touchesLeft({ x, y, dy }: Box): boolean {
    if (x === 0) return true
    for (let n = 0; n < placed.length; n++) {
      const p = placed[n]!
      if (p.x + p.dx === x && p.y < y + dy && y < p.y + p.dy) return true
    }
    return grid.blocked.some((k) => k.x1 === x && k.y0 < y + dy && y < k.y1)
  }
}

/** Where panels can start, with those that can on the bare surface. */
interface Point {
  readonly x: number
  readonly column: number
  readonly boxes: readonly Box[]
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
