import { boxAt, type Box, type Orientation } from './surface.ts'

/** The most panels found for a rectangle without keep-outs, and where they lie from its corner. */
export interface Rectangles {
  count(length: number, width: number): number
  boxes(length: number, width: number): readonly Box[]
}

/**
 * Rectangles without keep-outs: each is filled one way round, or cut in two, or in five parts that turn around the middle one like a
 * pinwheel, and each part again. What was found for a size is kept.
 *
 * @param length, width  the largest rectangle that will be asked for [µm]
 * @param steps          give up looking at more cuts after so many
 * @source five-block recursion: R. Morabito, S. Morales, Journal of the Operational Research Society 49 (1998) 819-828; what a side can
 *         use as its bound: F. Barnes, Discrete Mathematics 26 (1979) 93-100 (both from memory)
 */
export function fiveBlocks(ways: readonly Orientation[], length: number, width: number, steps: number): Rectangles {
  const [{ dx: a, dy: b }] = ways as [Orientation]
  const area = a * b
  const useful = usefulSizes(Math.max(length, width), [...new Set([a, b])])
  const known: Plan[][] = []
  const rasters: Cuts[] = []
  let left = steps
  let leftInTwo = mostInTwo
  return {
    count: (dx, dy) => planOf(atMost(dx), atMost(dy)).count,
    boxes: (dx, dy) => laid(atMost(dx), atMost(dy), 0, 0),
  }

  /** Index of the largest useful size that a side has room for. */
  function atMost(size: number): number {
    let from = 0
    let to = useful.length
    while (from < to) {
      const middle = (from + to) >> 1
      if (size < useful[middle]!) to = middle
      else from = middle + 1
    }
    return from - 1
  }

  /** Where it is worth cutting a side: useful on one side, and no more could be useful on the other. */
  function cutsOf(i: number): Cuts {
    const before = rasters[i]
    if (before) return before
    const cuts = new Set<number>()
    for (let p = 1; p < i; p++) cuts.add(atMost(useful[i]! - useful[p]!))
    cuts.delete(0)
    const at = [...cuts].sort((p, q) => p - q)
    return (rasters[i] = { at, rests: at.map((p) => atMost(useful[i]! - useful[p]!)) })
  }

  /** Panels that the area of a size would hold. */
  function roomOf(i: number, j: number): number {
    return ((useful[i]! * useful[j]!) / area) | 0
  }

  function planOf(i: number, j: number): Plan {
    const plans = (known[i] ??= [])
    const before = plans[j]
    if (before) return before
    const x = useful[i]!
    const y = useful[j]!
    let best: Plan = { count: 0, way: ways[0]! }
    for (const way of ways) {
      const count = Math.floor(x / way.dx) * Math.floor(y / way.dy)
      if (best.count < count) best = { count, way }
    }
    // a cut that comes back to the same size finds this
    plans[j] = best
    return (plans[j] = cut(i, j, best))
  }

  function cut(i: number, j: number, filled: Plan): Plan {
    const [x, y] = [useful[i]!, useful[j]!]
    const most = roomOf(i, j)
    let best = filled
    if (best.count === most) return best
    const { at: ps, rests: restsOfP } = cutsOf(i)
    const { at: qs, rests: restsOfQ } = cutsOf(j)
    for (let n = 0; n < ps.length && 2 * useful[ps[n]!]! <= x; n++) if (inTwo(ps[n]!, j, restsOfP[n]!, j)) return best
    for (let n = 0; n < qs.length && 2 * useful[qs[n]!]! <= y; n++) if (inTwo(i, qs[n]!, i, restsOfQ[n]!)) return best
    for (let m = 0; m < ps.length; m++)
      for (let n = m + 1; n < ps.length; n++)
        for (let u = 0; u < qs.length; u++)
          for (let v = u + 1; v < qs.length; v++) {
            if (left <= 0) return best
            if (pinwheel(ps[m]!, ps[n]!, qs[u]!, qs[v]!)) return best
          }
    return best

    function pinwheel(p1: number, p2: number, q1: number, q2: number): boolean {
      left--
      const x1 = useful[p1]!
      const x2 = useful[p2]!
      const y1 = useful[q1]!
      const y2 = useful[q2]!
      const room =
        (((x2 * y1) / area) | 0) +
        ((((x - x2) * y2) / area) | 0) +
        ((((x - x1) * (y - y2)) / area) | 0) +
        (((x1 * (y - y1)) / area) | 0) +
        ((((x2 - x1) * (y2 - y1)) / area) | 0)
      if (room <= best.count) return false
      const parts = [
        [p2, q1],
        [atMost(x - x2), q2],
        [atMost(x - x1), atMost(y - y2)],
        [p1, atMost(y - y1)],
        [atMost(x2 - x1), atMost(y2 - y1)],
      ] as const
      return attempt(parts, [[0, 0], [x2, 0], [x1, y2], [0, y1], [x1, y1]]) // prettier-ignore
    }

    /** As `attempt`, of two parts: what is asked most, so nothing is built before it is better. */
    function inTwo(p: number, q: number, p2: number, q2: number): boolean {
      if (--leftInTwo < 0) return true
      const second = roomOf(p2, q2)
      if (roomOf(p, q) + second <= best.count) return false
      const first = planOf(p, q).count
      if (first + second <= best.count) return false
      const count = first + planOf(p2, q2).count
      if (best.count < count)
        best = { count, parts: [[p, q], [p2, q2]], corners: [[0, 0], q === j ? [useful[p]!, 0] : [0, useful[q]!]] } // prettier-ignore
      return best.count === most
    }

    /** @returns whether no more can be better */
    function attempt(parts: readonly Size[], corners: readonly Corner[]): boolean {
      let room = 0
      for (const [p, q] of parts) room += roomOf(p, q)
      let count = 0
      for (const [p, q] of parts) {
        if (room <= best.count) return false
        const own = planOf(p, q).count
        room += own - roomOf(p, q)
        count += own
      }
      if (best.count < count) best = { count, parts, corners }
      return best.count === most
    }
  }

  function laid(i: number, j: number, x: number, y: number): Box[] {
    const plan = planOf(i, j)
    if ('parts' in plan)
      return plan.parts.flatMap(([p, q], n) => laid(p, q, x + plan.corners[n]![0], y + plan.corners[n]![1]))
    const { way } = plan
    const boxes: Box[] = []
    for (let at = 0; at + way.dx <= useful[i]!; at += way.dx)
      for (let up = 0; up + way.dy <= useful[j]!; up += way.dy) boxes.push(boxAt(x + at, y + up, way))
    return boxes
  }
}

/** Cuts in two that are looked at: 200 panels ask for less, and thousands, as when a size is typed in the wrong unit, for minutes. */
const mostInTwo = 3_000_000

/** Where to cut a side, ascending, and what is left of it: indices of useful sizes. */
interface Cuts {
  readonly at: readonly number[]
  readonly rests: readonly number[]
}

/** Indices of useful sizes. */
type Size = readonly [number, number]
/** [µm] */
type Corner = readonly [number, number]

type Plan =
  | { readonly count: number; readonly way: Orientation }
  | { readonly count: number; readonly parts: readonly Size[]; readonly corners: readonly Corner[] }

/** Sums of the panel's sides, ascending, from 0: a side that lies between two can use no more than the lower. */
function usefulSizes(most: number, sides: readonly number[]): readonly number[] {
  const found = new Set([0])
  for (const size of found) for (const side of sides) if (size + side <= most) found.add(size + side)
  return [...found].sort((a, b) => a - b)
}
