import type { Rectangles } from './five-blocks.ts'
import { meets, sharedArea, type Blocked, type Box, type Grid, type Orientation } from './surface.ts'

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
  const fillings = new Map<string, Filling>()
  const whole = { x0: 0, x1: grid.length, y0: 0, y1: grid.width }
  const plan = bestOf(whole, 'x', 2, 0)
  const other = bestOf(whole, 'y', 2, plan.count)
  return boxesOf(plan.count < other.count ? other : plan)

  /** @param known  a layout of so many is at hand: what cannot better it may be worse than the best */
  function bestOf(part: Blocked, axis: 'x' | 'y', cuts: number, known: number): Plan {
    if (!grid.blocked.some((k) => meets(part, k)))
      return { count: clear.count(part.x1 - part.x0, part.y1 - part.y0), clear: part }
    return cuts === 0 ? fill(part) : cut(part, axis, cuts, known)
  }

  /** Many cuts leave the same parts. */
  function fill(part: Blocked): Plan {
    const key = `${part.x0} ${part.x1} ${part.y0} ${part.y1}`
    const before = fillings.get(key)
    if (before) return before
    const filling = filled(grid, part)
    fillings.set(key, filling)
    return filling
  }

  function cut(part: Blocked, axis: 'x' | 'y', cuts: number, known: number): Plan {
    const other = axis === 'x' ? 'y' : 'x'
    let best = bestOf(part, other, cuts - 1, known)
    const [from, to] = axis === 'x' ? [part.x0, part.x1] : [part.y0, part.y1]
    for (const at of axis === 'x' ? xs : ys) {
      if (at <= from) continue
      if (to <= at || enough <= best.count) break
      const low = axis === 'x' ? { ...part, x1: at } : { ...part, y1: at }
      const high = axis === 'x' ? { ...part, x0: at } : { ...part, y0: at }
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
    for (const k of grid.apart) free -= sharedArea(part, k)
    return Math.floor(free / area)
  }

  function boxesOf(plan: Plan): readonly Box[] {
    if ('parts' in plan) return plan.parts.flatMap(boxesOf)
    if (!('clear' in plan)) return laid(plan)
    const { x0, x1, y0, y1 } = plan.clear
    return clear.boxes(x1 - x0, y1 - y0).map((box) => ({ ...box, x: box.x + x0, y: box.y + y0 }))
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
  /** The keep-outs inside the part. */
  readonly inside: readonly Blocked[]
}

function filled(grid: Grid, part: Blocked): Filling {
  const inside = grid.blocked.filter((k) => meets(part, k))
  let best: Filling = { count: 0, part, way: grid.orientations[0]!, inRows: true, inside }
  const better = (count: number, way: Orientation, inRows: boolean) => {
    if (best.count < count) best = { count, part, way, inRows, inside }
  }
  for (const way of grid.orientations)
    for (const inRows of [true, false]) {
      let count = 0
      visit({ part, way, inRows }, inside, (_, stretch, side) => (count += Math.floor(stretch / side)))
      better(count, way, inRows)
    }
  return best
}

function laid(filling: Filling): readonly Box[] {
  const { way, inRows } = filling
  const boxes: Box[] = []
  visit(filling, filling.inside, (start, stretch, side, row) => {
    for (let at = start; at + side <= start + stretch; at += side)
      boxes.push(inRows ? { x: at, y: row, ...way } : { x: row, y: at, ...way })
  })
  return boxes
}

/** Calls back for each stretch between keep-outs of each row (column), with the side of the panel along it. */
function visit(
  { part, way, inRows }: Pick<Filling, 'part' | 'way' | 'inRows'>,
  blocked: readonly Blocked[],
  found: (start: number, stretch: number, side: number, row: number) => void,
): void {
  const { x0, x1, y0, y1 } = part
  const [from, to, side] = inRows ? [x0, x1, way.dx] : [y0, y1, way.dy]
  const [first, last, depth] = inRows ? [y0, y1, way.dy] : [x0, x1, way.dx]
  for (let row = first; row + depth <= last; row += depth) {
    let start = from
    for (;;) {
      // the next keep-out in this row, from where the stretch starts
      let end = to
      let next = to
      for (const k of blocked) {
        const [low, high, near, far] = inRows ? [k.y0, k.y1, k.x0, k.x1] : [k.x0, k.x1, k.y0, k.y1]
        if (row < high && low < row + depth && start < far && near < end) [end, next] = [Math.max(near, start), far]
      }
      found(start, end - start, side, row)
      if (to <= next) break
      start = next
    }
  }
}
