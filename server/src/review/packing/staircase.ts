import { Beam, type Stairs } from './beam.ts'
import type { Box, Grid } from './surface.ts'

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
  const free = length * grid.width - keptOut(0, length, 0, grid.width)
  // the staircase being built: where each step ends across the surface, and how far it reaches along it
  const [ends, reach] = [[] as number[], [] as number[]]
  let size = 0
  let lost = 0
  let most = known
  let best: Stairs | null = null
  let level: readonly Stairs[] = [{ ends: [grid.width], reach: [0], lost: 0, count: 0, box: null, before: null }]
  while (level.length > 0 && most < enough) {
    const next = new Beam(width)
    for (const stairs of level)
      for (let end: Stairs | null = stairs; end && next.takes(end.lost); end = givenUp(end)) grow(end, next)
    level = next.inOrder()
    const [first] = level
    if (first && most < first.count) [best, most] = [first, first.count]
  }
  return best && boxesOf(best)

  function grow(stairs: Stairs, next: Beam): void {
    const low = lowest(stairs.reach)
    const [from, to, x] = [low === 0 ? 0 : stairs.ends[low - 1]!, stairs.ends[low]!, stairs.reach[low]!]
    for (const way of ways) {
      const last = to - way.dy
      if (last < from || length < x + way.dx) continue
      put(from, way)
      if (from < last) put(last, way)
      for (const k of blocked) {
        if (k.x1 <= x || x + way.dx <= k.x0) continue
        if (from < k.y1 && k.y1 < last) put(k.y1, way)
        if (from < k.y0 - way.dy && k.y0 - way.dy < last) put(k.y0 - way.dy, way)
      }
    }

    function put(y: number, way: Grid['orientations'][number]): void {
      // what it gives up besides makes it no better
      if (!next.takes(stairs.lost)) return
      for (const k of blocked) if (x < k.x1 && k.x0 < x + way.dx && y < k.y1 && k.y0 < y + way.dy) return
      start(stairs, low)
      if (from < y) step(y, x)
      step(y + way.dy, x + way.dx)
      if (y + way.dy < to) step(to, x)
      finish(stairs, low)
      if (next.takes(lost) && (hopes() || most <= stairs.count))
        next.add({
          ends: ends.slice(0, size),
          reach: reach.slice(0, size),
          lost,
          count: stairs.count + 1,
          box: { x, y, ...way },
          before: stairs,
        })
    }
  }

  /** The lowest step raised to where something else begins; null at the end of the surface, or where too much would be lost. */
  function givenUp(stairs: Stairs): Stairs | null {
    const low = lowest(stairs.reach)
    const [from, end, x] = [low === 0 ? 0 : stairs.ends[low - 1]!, stairs.ends[low]!, stairs.reach[low]!]
    let to = nearest(stairs.reach, low, stairs.ends.length)
    for (const k of blocked) if (k.y0 < end && from < k.y1 && x < k.x1 && k.x1 < to) to = k.x1
    if (length < to + least) return null
    start(stairs, low)
    lost += (to - x) * (end - from) - keptOut(x, to, from, end)
    if (!hopes()) return null
    step(end, to)
    finish(stairs, low)
    if (!hopes()) return null
    const { count, box, before } = stairs
    return { ends: ends.slice(0, size), reach: reach.slice(0, size), lost, count, box, before }
  }

  function hopes(): boolean {
    return most < Math.floor((free - lost) / area)
  }

  /** Reach of the lower of a step's neighbours. */
  function nearest(all: readonly number[], i: number, count: number): number {
    const before = i === 0 ? length : all[i - 1]!
    const after = i + 1 === count ? length : all[i + 1]!
    return before < after ? before : after
  }

  function start(stairs: Stairs, low: number): void {
    size = 0
    lost = stairs.lost
    for (let i = 0; i < low; i++) step(stairs.ends[i]!, stairs.reach[i]!)
  }

  function step(end: number, x: number): void {
    if (size === 0 || reach[size - 1] !== x) reach[size++] = x
    ends[size - 1] = end
  }

  /** The rest of the steps; those near the change that no panel fits on any more are given up at once. */
  function finish(stairs: Stairs, low: number): void {
    for (let i = low + 1; i < stairs.ends.length; i++) step(stairs.ends[i]!, stairs.reach[i]!)
    for (let i = Math.max(0, low - 2); i < size && i < low + 4; i++) {
      const [x, end] = [reach[i]!, ends[i]!]
      const from = i === 0 ? 0 : ends[i - 1]!
      const next = nearest(reach, i, size)
      const to = length < x + least ? length : end - from < least && x < next ? next : x
      if (x === to) continue
      lost += (to - x) * (end - from) - keptOut(x, to, from, end)
      reach[i] = to
      if (i + 1 < size && reach[i + 1] === to) remove(i)
      if (i > 0 && reach[i - 1] === to) remove(i - 1)
      i = Math.max(-1, i - 3)
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
    for (const k of apart) {
      const across = (x1 < k.x1 ? x1 : k.x1) - (x0 < k.x0 ? k.x0 : x0)
      const up = (y1 < k.y1 ? y1 : k.y1) - (y0 < k.y0 ? k.y0 : y0)
      if (across > 0 && up > 0) sum += across * up
    }
    return sum
  }
}

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
