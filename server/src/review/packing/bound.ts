import type { Blocked, Grid } from './surface.ts'

/**
 * More panels than this cannot lie on the surface.
 *
 * A line along the surface crosses some panels that lie straight and some that lie turned, and both side by side must fit
 * between the keep-outs on it; so must those on a line across. The lines together limit how many straight and turned
 * panels there can be: `straight n + turned m <= sum over all lines of the most that one line can carry`, for every weight.
 *
 * @returns a whole number, at least 0
 * @source the count of panels crossed by lines is that of H. Isermann, OR Spektrum 9 (1987) 235-249 (from memory), here with
 *         keep-outs and as a bound
 */
export function upperBound({ length, width, orientations: ways, blocked }: Grid): number {
  const [{ dx: a, dy: b }] = ways as [Grid['orientations'][number]]
  const along = linesOf(width, length, blocked)
  const across = linesOf(length, width, blocked.map(transposed))
  const limits = [
    ...limitsOf(along, a, b), // a straight panel takes a of a line along and is crossed by lines over b
    ...limitsOf(across, b, a),
  ]
  if (ways.length === 1)
    return Math.floor(Math.min(...limits.map((l) => l.total / Math.max(l.straight, l.turned))) + tiny)
  const most = Math.floor(Math.min(...limits.map((l) => l.total / l.straight)) + tiny)
  let best = 0
  for (let straight = 0; straight <= most; straight++) {
    const left = Math.min(...limits.map((l) => (l.total - straight * l.straight) / l.turned))
    if (left >= -tiny) best = Math.max(best, straight + Math.floor(left + tiny))
  }
  return best
}

/** `straight n + turned m <= total` for n panels straight and m turned. */
interface Limit {
  readonly straight: number
  readonly turned: number
  readonly total: number
}

/** Lines that meet the same keep-outs: how many micrometres of them, and the free stretches on each. */
interface Lines {
  readonly thickness: number
  readonly free: readonly number[]
}

const tiny = 1e-9
const transposed = ({ x0, x1, y0, y1 }: Blocked): Blocked => ({ x0: y0, x1: y1, y0: x0, y1: x1 })

function linesOf(thickness: number, length: number, blocked: readonly Blocked[]): readonly Lines[] {
  const edges = [0, thickness, ...blocked.flatMap((k) => [k.y0, k.y1])].filter((y) => 0 <= y && y <= thickness)
  const cuts = [...new Set(edges)].sort((p, q) => p - q)
  return cuts.slice(1).map((end, i) => {
    const start = cuts[i]!
    const met = blocked.filter((k) => k.y0 <= start && end <= k.y1).sort((p, q) => p.x0 - q.x0)
    const free: number[] = []
    let from = 0
    for (const k of met) {
      if (from < k.x0) free.push(k.x0 - from)
      from = Math.max(from, k.x1)
    }
    if (from < length) free.push(length - from)
    return { thickness: end - start, free }
  })
}

/** @param a, b  side of a straight and of a turned panel along the lines; each is crossed by lines over the other's side */
function limitsOf(lines: readonly Lines[], a: number, b: number): readonly Limit[] {
  return weights.map(([p, q]) => ({
    straight: p * b,
    turned: q * a,
    total: lines.reduce((sum, { thickness, free }) => {
      return sum + thickness * free.reduce((one, stretch) => one + mostOn(stretch, [a, p], [b, q]), 0)
    }, 0),
  }))
}

/** The most weight that sides can bring onto a stretch. */
function mostOn(stretch: number, [a, p]: readonly [number, number], [b, q]: readonly [number, number]): number {
  let best = 0
  for (let n = 0; n * a <= stretch; n++) best = Math.max(best, n * p + Math.floor((stretch - n * a) / b) * q)
  return best
}

/** Weights of straight and turned panels: any will do, more give a tighter bound. */
const weights = Array.from({ length: 7 }, (_, p) => Array.from({ length: 7 }, (_, q) => [p, q] as const))
  .flat()
  .filter(([p, q]) => p > 0 && q > 0 && gcd(p, q) === 1)

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b)
}
