import { random } from '../../physics/random.ts'
import { isFree, type Box, type Grid } from './surface.ts'

/**
 * Betters a layout by putting panels in, taking those out that are in the way: a place where one panel is in the way is a
 * slide, one where two are is a step back. What was taken out may not return at once. Ends after a fixed number of steps or at
 * `enough` panels; the same layout always gives the same result.
 *
 * @param start  panels at places out of `xs` and `ys`
 * @source local search for independent sets: D. Andrade, M. Resende, R. Werneck, Journal of Heuristics 18 (2012) 525-547,
 *         doi:10.1007/s10732-012-9196-4; here each vertex is a place for a panel and each edge an overlap
 */
export function improve(
  grid: Grid,
  { xs, ys }: { readonly xs: readonly number[]; readonly ys: readonly number[] },
  start: readonly Box[],
  { enough, steps }: { readonly enough: number; readonly steps: number },
): readonly Box[] {
  const { ways } = grid
  const count = ways.length * xs.length * ys.length
  const boxes: (Box | null)[] = Array.from({ length: count }, (_, v) => boxAt(v))
  const inTheWay = new Int16Array(count)
  const takenOut = new Int32Array(count)
  const isPlace = Uint8Array.from(boxes, (box) => Number(box !== null))
  const placed: number[] = []
  /** Free places by how many panels are in the way: none, one, two. */
  const open = [new Bag(count), new Bag(count), new Bag(count)] as const
  for (let v = 0; v < count; v++) if (boxes[v]) open[0].add(v)
  for (const box of start) put(vertexOf(box))

  let best = [...placed]
  let state = 1
  for (let step = 1; step <= steps && best.length < enough; step++) {
    const v = choose(step)
    if (v < 0) continue
    for (const u of placed.filter((u) => overlaps(u, v))) takeOut(u, step)
    put(v)
    if (best.length < placed.length) best = [...placed]
  }
  return best.map((v) => boxes[v]!)

  function choose(step: number): number {
    if (open[0].size > 0) return open[0].at(Math.floor(draw() * open[0].size))
    const [first, second] = draw() < slides ? [open[1], open[2]] : [open[2], open[1]]
    const found = pick(first, step)
    return found < 0 ? pick(second, step) : found
  }

  /** Of a few drawn at random, the one that was out the longest; one just taken out is no choice. */
  function pick(bag: Bag, step: number): number {
    let found = -1
    for (let i = 0; i < 8 && bag.size > 0; i++) {
      const v = bag.at(Math.floor(draw() * bag.size))
      if (takenOut[v]! > 0 && step < takenOut[v]! + rest) continue
      if (found < 0 || takenOut[v]! < takenOut[found]!) found = v
    }
    return found
  }

  function draw(): number {
    const next = random(state)
    state = next.state
    return next.value
  }

  function put(v: number): void {
    placed.push(v)
    change(v, 1)
  }

  function takeOut(v: number, step: number): void {
    placed.splice(placed.indexOf(v), 1)
    takenOut[v] = step
    change(v, -1)
  }

  /** A panel came or went: every place that it overlaps has one more or one less in the way. */
  function change(v: number, by: 1 | -1): void {
    const { x, y, dx, dy } = boxes[v]!
    for (let way = 0; way < ways.length; way++) {
      const other = ways[way]!
      const [x0, x1] = between(xs, x - other.dx, x + dx)
      const [y0, y1] = between(ys, y - other.dy, y + dy)
      for (let i = x0; i < x1; i++)
        for (let j = y0; j < y1; j++) {
          const u = (way * xs.length + i) * ys.length + j
          if (!isPlace[u]) continue
          const was = inTheWay[u]!
          inTheWay[u] = was + by
          if (was < 3) open[was as 0 | 1 | 2].remove(u)
          if (was + by < 3) open[(was + by) as 0 | 1 | 2].add(u)
        }
    }
  }

  function overlaps(u: number, v: number): boolean {
    const [a, b] = [boxes[u]!, boxes[v]!]
    return a.x < b.x + b.dx && b.x < a.x + a.dx && a.y < b.y + b.dy && b.y < a.y + a.dy
  }

  function boxAt(v: number): Box | null {
    const [i, j] = [Math.floor(v / ys.length) % xs.length, v % ys.length]
    const box = { x: xs[i]!, y: ys[j]!, ...ways[Math.floor(v / (xs.length * ys.length))]! }
    return isFree(grid, box) ? box : null
  }

  function vertexOf({ x, y, turned }: Box): number {
    return (Number(turned) * xs.length + xs.indexOf(x)) * ys.length + ys.indexOf(y)
  }
}

/** Share of steps that move one panel rather than give one up; steps for which a panel that was taken out stays out. */
const slides = 0.98
const rest = 5

/** Indices of the numbers above `low` and below `high`. */
function between(sorted: readonly number[], low: number, high: number): readonly [number, number] {
  return [firstAbove(sorted, low), firstAbove(sorted, high - 1)]
}

function firstAbove(sorted: readonly number[], limit: number): number {
  let [from, to] = [0, sorted.length]
  while (from < to) {
    const middle = (from + to) >> 1
    if (limit < sorted[middle]!) to = middle
    else from = middle + 1
  }
  return from
}

/** Numbers below `most`, of which one can be drawn, added and removed at once. */
class Bag {
  private readonly items: Int32Array
  private readonly place: Int32Array
  size = 0

  constructor(most: number) {
    this.items = new Int32Array(most)
    this.place = new Int32Array(most).fill(-1)
  }

  at(i: number): number {
    return this.items[i]!
  }

  add(v: number): void {
    this.place[v] = this.size
    this.items[this.size++] = v
  }

  remove(v: number): void {
    const hole = this.place[v]!
    const last = this.items[--this.size]!
    this.items[hole] = last
    this.place[last] = hole
    this.place[v] = -1
  }
}
