import type { Rectangles } from './five-blocks.ts'
import { freeRows, type FreeRows } from './free-rows.ts'
import { boxAt, meets, sharedArea, type Blocked, type Box, type Grid, type Orientation } from './surface.ts'

/**
 * A good layout in a moment: the surface is cut right across, each part again the other way, and what is left is filled with
 * rows or columns of panels that lie one way round, past the keep-outs, or where there are none in the best way known; the best
 * of all cuts.
 *
 * @param xs, ys  where to cut, ascending
 * @param clear   layouts of rectangles without keep-outs
 * @param enough  stop at so many
 * @source blocks of like panels as in pallet loading: A. Smith, P. De Cani, Journal of the Operational Research Society 31 (1980)
 *         573-578 (from memory)
 */
export function blocks(
  grid: Grid,
  { xs, ys }: { readonly xs: readonly number[]; readonly ys: readonly number[] },
  clear: Rectangles,
  enough: number,
): readonly Box[] {
  const area = grid.orientations[0]!.dx * grid.orientations[0]!.dy
  const rows = freeRows(grid)
  const fillings = new Map<number, Filling>()
  const ends = new Map([...new Set([0, grid.length, grid.width, ...xs, ...ys])].map((at, i) => [at, i]))
  const whole = { x0: 0, x1: grid.length, y0: 0, y1: grid.width }
  const plan = bestOf(whole, 'x', 2, 0)
  const other = bestOf(whole, 'y', 2, plan.count)
  return boxesOf(plan.count < other.count ? other : plan)

  /** @param known  a layout of so many is at hand: what cannot better it may be worse than the best */
  function bestOf(part: Blocked, axis: 'x' | 'y', cuts: number, known: number): Plan {
    if (isClear(part)) return { count: clear.count(part.x1 - part.x0, part.y1 - part.y0), clear: part }
    return cuts === 0 ? fill(part) : cut(part, axis, cuts, known)
  }

  function isClear(part: Blocked): boolean {
    for (let i = 0; i < grid.blocked.length; i++) if (meets(part, grid.blocked[i]!)) return false
    return true
  }

  /** Many cuts leave the same parts. */
  function fill(part: Blocked): Plan {
    const places = ends.get(part.x0)! * ends.size + ends.get(part.x1)!
    const key = (places * ends.size + ends.get(part.y0)!) * ends.size + ends.get(part.y1)!
    const before = fillings.get(key)
    if (before) return before
    const filling = filled(grid, rows, part)
    fillings.set(key, filling)
    return filling
  }

  function cut(part: Blocked, axis: 'x' | 'y', cuts: number, known: number): Plan {
    const other = axis === 'x' ? 'y' : 'x'
    let best = bestOf(part, other, cuts - 1, known)
    const { x0, x1, y0, y1 } = part
    const from = axis === 'x' ? x0 : y0
    const to = axis === 'x' ? x1 : y1
    const places = axis === 'x' ? xs : ys
    for (let i = 0; i < places.length; i++) {
      const at = places[i]!
      if (at <= from) continue
      if (to <= at || enough <= best.count) break
      const low = axis === 'x' ? { x0, x1: at, y0, y1 } : { x0, x1, y0, y1: at }
      const high = axis === 'x' ? { x0: at, x1, y0, y1 } : { x0, x1, y0: at, y1 }
      const least = Math.max(known, best.count)
      if (room(low) + room(high) <= least) continue
      const first = bestOf(low, other, cuts - 1, least - room(high))
      if (first.count + room(high) <= least) continue
      const second = bestOf(high, other, cuts - 1, least - first.count)
      if (best.count < first.count + second.count) best = { count: first.count + second.count, parts: [first, second] }
    }
    return best
  }

  /** Panels that the area of a part would hold. */
  function room(part: Blocked): number {
    let free = (part.x1 - part.x0) * (part.y1 - part.y0)
    for (let i = 0; i < grid.apart.length; i++) free -= sharedArea(part, grid.apart[i]!)
    return Math.floor(free / area)
  }

  function boxesOf(plan: Plan): readonly Box[] {
    if ('parts' in plan) return plan.parts.flatMap(boxesOf)
    if (!('clear' in plan)) return laid(rows, plan)
    const { x0, x1, y0, y1 } = plan.clear
    return clear.boxes(x1 - x0, y1 - y0).map((box) => boxAt(box.x + x0, box.y + y0, box))
  }
}

/** How many panels a part takes, and how: filled one way round, as two parts, or without keep-outs. */
type Plan =
  | Filling
  | { readonly count: number; readonly parts: readonly [Plan, Plan] }
  | { readonly count: number; readonly clear: Blocked }

interface Filling {
  readonly count: number
  readonly part: Blocked
  readonly way: Orientation
  /** Rows can slide past keep-outs along x, columns along y. */
  readonly inRows: boolean
}

function filled(grid: Grid, rows: FreeRows, part: Blocked): Filling {
  let best: Filling = { count: 0, part, way: grid.orientations[0]!, inRows: true }
  for (const way of grid.orientations) {
    const most = Math.floor((part.x1 - part.x0) / way.dx) * Math.floor((part.y1 - part.y0) / way.dy)
    for (const inRows of [true, false]) {
      if (most <= best.count) break
      const found = runs(rows, { part, way, inRows })
      let count = 0
      for (let i = 0; i < found; i++) count += buffer[3 * i + 2]!
      if (best.count < count) best = { count, part, way, inRows }
    }
  }
  return best
}

function laid(rows: FreeRows, filling: Filling): readonly Box[] {
  const { way, inRows } = filling
  const side = inRows ? way.dx : way.dy
  const boxes: Box[] = []
  const found = runs(rows, filling)
  for (let i = 0; i < found; i++) {
    const [row, start, count] = [buffer[3 * i]!, buffer[3 * i + 1]!, buffer[3 * i + 2]!]
    for (let at = start; at < start + count * side; at += side)
      boxes.push(inRows ? boxAt(at, row, way) : boxAt(row, at, way))
  }
  return boxes
}

/** Written over by each call of `runs`, as thousands of parts are looked at: row, start and number of panels of each. */
const buffer: number[] = []

/** How many runs of panels there are between the keep-outs of all rows (columns) of a part. */
function runs(rows: FreeRows, { part: { x0, x1, y0, y1 }, way, inRows }: Omit<Filling, 'count'>): number {
  const from = inRows ? x0 : y0
  const to = inRows ? x1 : y1
  const side = inRows ? way.dx : way.dy
  const first = inRows ? y0 : x0
  const last = inRows ? y1 : x1
  const depth = inRows ? way.dy : way.dx
  const all = rows(way, inRows, first)
  let found = 0
  for (let row = first, k = 0; row + depth <= last; row += depth, k++) {
    const free = all[k]!
    // behind the panel before, where the keep-out between them is narrower than the gap
    let start = from
    for (let i = 0; i < free.length; i += 2) {
      if (start < free[i]!) start = free[i]!
      const end = free[i + 1]!
      const count = (((end < to ? end : to) - start) / side) | 0
      if (count <= 0) continue
      buffer[3 * found] = row
      buffer[3 * found + 1] = start
      buffer[3 * found + 2] = count
      found++
      start += count * side
    }
  }
  return found
}
