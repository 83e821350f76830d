import type { Grid } from './surface.ts'

/** Where a panel can start along each side of the surface [µm], ascending. */
export interface Positions {
  readonly xs: readonly number[]
  readonly ys: readonly number[]
  /** Whether some layout of the most panels starts each of them at one of these. */
  readonly complete: boolean
}

/**
 * Sums of the panel's sides, counted from the surface's edge and from each keep-out: where a panel comes to lie when each is
 * pushed to the left and down until it touches something. Where that is too many, sums are counted from the edge alone.
 *
 * @source normal patterns: N. Christofides, C. Whitlock, Operations Research 25 (1977) 30-44 (from memory)
 */
export function positionsOf({ length, width, orientations: ways, blocked }: Grid): Positions {
  const sides = ways.map((way) => way.dx)
  const [right, above] = [blocked.map((k) => k.x1), blocked.map((k) => k.y1)]
  const xs = sums(length, sides, right)
  const ys = sums(width, sides, above)
  if (xs.length * ys.length <= most) return { xs, ys, complete: true }
  return { xs: thinned(sums(length, sides, [])), ys: thinned(sums(width, sides, [])), complete: false }
}

/** Places on the surface that a search can look at in the time of a keystroke. */
const most = 10_000

/** Evenly, the first among them. */
function thinned(all: readonly number[]): readonly number[] {
  const step = Math.ceil(all.length / 80)
  return all.filter((_, i) => i % step === 0)
}

function sums(size: number, sides: readonly number[], edges: readonly number[]): readonly number[] {
  const least = Math.min(...sides)
  const found = new Set([0, ...edges.filter((edge) => 0 < edge)].filter((start) => start + least <= size))
  for (const start of found) for (const side of sides) if (start + side + least <= size) found.add(start + side)
  return [...found].sort((a, b) => a - b)
}
