import { Beam, type Stairs } from './beam.ts'
import { boxAt, type Box, type Grid, type Orientation } from './surface.ts'

/**
 * Layouts that grow from one end of the surface as a staircase: its lowest step takes a panel, either way round, or is given up as
 * far as the next step or past the next keep-out. Of the staircases of equally many panels those go on that gave up the least area.
 *
 * @param known   a layout of so many is at hand: only better ones count
 * @param enough  stop at so many
 * @param width   how many staircases of a count go on
 * @returns       null where none is better than what is known
 * @source staircases of pallet loading: G. Scheithauer, J. Terno, European Journal of Operational Research 88 (1996) 370-390;
 *         beam search over the skyline of a packing (both from memory)
 */
export function staircase(
  grid: Grid,
  { known, enough, width }: { readonly known: number; readonly enough: number; readonly width: number },
): readonly Box[] | null {
  const { length, orientations: ways, blocked, apart } = grid
  const area = ways[0]!.dx * ways[0]!.dy
  const least = Math.min(ways[0]!.dx, ways[0]!.dy)
  const longest = Math.max(ways[0]!.dx, ways[0]!.dy)
  // the staircase being built: where each step ends across the surface, and how far it reaches along it
  const [ends, reach] = [[] as number[], [] as number[]]
  let size = 0
  let left = 0
  // keep-outs that a panel on the lowest step could lie on
  const near: Grid['blocked'][number][] = []
  const free = length * grid.width - keptOut(0, length, 0, grid.width)
  let most = known
  let best: Stairs | null = null
  let level: readonly Stairs[] = [{ ends: [grid.width], reach: [0], left: free, count: 0, box: null, before: null }]
  while (level.length > 0 && most < enough) {
    const next = new Beam(width)
    for (const stairs of level)
      for (let end: Stairs | null = stairs; end && next.takes(end.left); end = givenUp(end)) grow(end, next)
    level = next.inOrder()
    const [first] = level
    if (first && most < first.count) [best, most] = [first, first.count]
  }
  return best && boxesOf(best)

  function grow(stairs: Stairs, next: Beam): void {
    const low = lowest(stairs.reach)
    const from = startOf(stairs, low)
    const to = stairs.ends[low]!
    const x = stairs.reach[low]!
    near.length = 0
    for (let i = 0; i < blocked.length; i++)
      if (x < blocked[i]!.x1 && blocked[i]!.x0 < x + longest) near.push(blocked[i]!)
    for (let w = 0; w < ways.length; w++) {
      const way = ways[w]!
      const last = to - way.dy
      if (last < from || length < x + way.dx) continue
      put(stairs, low, from, way, next)
      if (from < last) put(stairs, low, last, way, next)
      for (let i = 0; i < near.length; i++) {
        const k = near[i]!
        if (x + way.dx <= k.x0) continue
        if (from < k.y1 && k.y1 < last) put(stairs, low, k.y1, way, next)
        if (from < k.y0 - way.dy && k.y0 - way.dy < last) put(stairs, low, k.y0 - way.dy, way, next)
      }
    }
  }

  function put(stairs: Stairs, low: number, y: number, way: Orientation, next: Beam): void {
    const { dx, dy } = way
    // what it gives up besides makes it no better
    if (!next.takes(stairs.left)) return
    const x = stairs.reach[low]!
    for (let i = 0; i < near.length; i++) {
      const k = near[i]!
      if (k.x0 < x + dx && y < k.y1 && k.y0 < y + dy) return
    }
    const to = stairs.ends[low]!
    start(stairs, low)
    if (startOf(stairs, low) < y) step(y, x)
    step(y + dy, x + dx)
    if (y + dy < to) step(to, x)
    finish(stairs, low)
    if (!next.takes(left) || (stairs.count < most && !hopes())) return
    const at = next.placeOf(ends, reach, size, left)
    if (at >= 0) next.add(built(stairs.count + 1, boxAt(x, y, way), stairs), at)
  }

  /** The lowest step raised to where something else begins; null at the end of the surface, or where too much would be lost. */
  function givenUp(stairs: Stairs): Stairs | null {
    const low = lowest(stairs.reach)
    const from = startOf(stairs, low)
    const end = stairs.ends[low]!
    const x = stairs.reach[low]!
    let to = nearest(stairs.reach, low, stairs.ends.length)
    for (let i = 0; i < blocked.length; i++) {
      const k = blocked[i]!
      if (k.y0 < end && from < k.y1 && x < k.x1 && k.x1 < to) to = k.x1
    }
    if (length < to + least) return null
    start(stairs, low)
    left -= (to - x) * (end - from) - keptOut(x, to, from, end)
    if (!hopes()) return null
    step(end, to)
    finish(stairs, low)
    if (!hopes()) return null
    return built(stairs.count, stairs.box, stairs.before)
  }

  function built(count: number, box: Box | null, before: Stairs | null): Stairs {
    return { ends: ends.slice(0, size), reach: reach.slice(0, size), left, count, box, before }
  }

  function hopes(): boolean {
    return most + 1 <= left / area
  }

  /** Reach of the lower of a step's neighbours. */
  function nearest(all: readonly number[], i: number, count: number): number {
    const before = i === 0 ? length : all[i - 1]!
    const after = i + 1 === count ? length : all[i + 1]!
    return before < after ? before : after
  }

  function start(stairs: Stairs, low: number): void {
    size = 0
    left = stairs.left
    for (let i = 0; i < low; i++) step(stairs.ends[i]!, stairs.reach[i]!)
  }

  function step(end: number, x: number): void {
    if (size === 0 || reach[size - 1] !== x) reach[size++] = x
    ends[size - 1] = end
  }

  /** The rest of the steps; those near the change that no panel fits on any more are given up at once. */
  function finish(stairs: Stairs, low: number): void {
    for (let i = low + 1; i < stairs.ends.length; i++) step(stairs.ends[i]!, stairs.reach[i]!)
    for (let i = low < 2 ? 0 : low - 2; i < size && i < low + 4; i++) {
      const x = reach[i]!
      const end = ends[i]!
      const from = i === 0 ? 0 : ends[i - 1]!
      const next = nearest(reach, i, size)
      const to = length < x + least ? length : end - from < least && x < next ? next : x
      if (x === to) continue
      left -= (to - x) * (end - from) - keptOut(x, to, from, end)
      reach[i] = to
      if (i + 1 < size && reach[i + 1] === to) remove(i)
      if (i > 0 && reach[i - 1] === to) remove(i - 1)
      i = i < 2 ? -1 : i - 3
    }
  }

  function remove(i: number): void {
    size--
    for (let j = i; j < size; j++) {
      ends[j] = ends[j + 1]!
      reach[j] = reach[j + 1]!
    }
  }

  function keptOut(x0: number, x1: number, y0: number, y1: number): number {
    let sum = 0
    for (let i = 0; i < apart.length; i++) {
      const k = apart[i]!
      const across = (x1 < k.x1 ? x1 : k.x1) - (x0 < k.x0 ? k.x0 : x0)
      const up = (y1 < k.y1 ? y1 : k.y1) - (y0 < k.y0 ? k.y0 : y0)
      if (across > 0 && up > 0) sum += across * up
    }
    return sum
  }
}

const startOf = ({ ends }: Stairs, low: number): number => (low === 0 ? 0 : ends[low - 1]!)

function lowest(reach: readonly number[]): number {
  let low = 0
  for (let i = 1; i < reach.length; i++) if (reach[i]! < reach[low]!) low = i
  return low
}

function boxesOf(stairs: Stairs): readonly Box[] {
  const boxes: Box[] = []
  for (let end: Stairs | null = stairs; end; end = end.before) if (end.box) boxes.push(end.box)
  return boxes
}
