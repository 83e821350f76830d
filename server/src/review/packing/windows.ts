import { staircase } from './staircase.ts'
import { boxAt, meets, rounded, type Blocked, type Box, type Grid } from './surface.ts'
import { views } from './views.ts'

/**
 * Betters a layout piece by piece: the panels in a window are lifted and laid anew around what reaches into it; the window moves
 * over the whole surface, and again while that gains a panel.
 *
 * @param enough   stop at so many
 * @param rounds   how often at most
 * @param width    see `staircase`
 */
export function inWindows(
  grid: Grid,
  start: readonly Box[],
  { enough, rounds, width }: { readonly enough: number; readonly rounds: number; readonly width: number },
): readonly Box[] {
  const side = Math.sqrt(grid.orientations[0]!.dx * grid.orientations[0]!.dy)
  let boxes = start
  for (let round = 0; round < rounds; round++) {
    const before = boxes.length
    for (const window of windowsOf(grid, side * sizes[round % sizes.length]!)) {
      if (enough <= boxes.length) return boxes
      boxes = relaid(grid, boxes, window, width, round)
    }
    if (boxes.length === before && round + 1 >= sizes.length) break
  }
  return boxes
}

/** Sides of a window, in sides of a square panel of the same area. */
const sizes = [4, 5.3]

function windowsOf({ length, width }: Grid, side: number): readonly Blocked[] {
  const starts = (whole: number) => {
    const count = Math.max(1, Math.ceil((whole - side) / (side / 2)) + 1)
    return Array.from({ length: count }, (_, i) => rounded(Math.min(Math.max(0, whole - side), (i * side) / 2)))
  }
  const end = (whole: number, from: number) => rounded(Math.min(whole, from + side))
  return starts(length).flatMap((x) =>
    starts(width).map((y) => ({ x0: x, x1: end(length, x), y0: y, y1: end(width, y) })),
  )
}

function relaid(grid: Grid, boxes: readonly Box[], window: Blocked, width: number, round: number): readonly Box[] {
  const { x0, y0, x1, y1 } = window
  const stay: Box[] = []
  const reachingIn: Blocked[] = []
  for (let i = 0; i < boxes.length; i++) {
    const box = boxes[i]!
    const { x, y, dx, dy } = box
    if (x0 <= x && x + dx <= x1 && y0 <= y && y + dy <= y1) continue
    stay.push(box)
    if (x < x1 && x0 < x + dx && y < y1 && y0 < y + dy) reachingIn.push({ x0: x, x1: x + dx, y0: y, y1: y + dy })
  }
  const shifted = (list: readonly Blocked[]) =>
    list.filter((k) => meets(window, k)).map((k) => ({ x0: k.x0 - x0, x1: k.x1 - x0, y0: k.y0 - y0, y1: k.y1 - y0 }))
  const part: Grid = {
    length: x1 - x0,
    width: y1 - y0,
    orientations: grid.orientations,
    blocked: shifted([...grid.blocked, ...reachingIn]),
    apart: shifted([...grid.apart, ...reachingIn]),
  }
  const known = boxes.length - stay.length
  const { grid: seen, back } = views[round % views.length]!(part)
  const found = staircase(seen, { known, enough: Infinity, width })
  return found ? [...stay, ...found.map(back).map((box) => boxAt(box.x + x0, box.y + y0, box))] : boxes
}
