/** A rectangle on a surface [m]; x runs along the surface's length, from one corner. */
export interface Rectangle {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

export interface SurfaceShape {
  /** [m] */
  readonly length: number
  readonly width: number
  readonly keepOut: readonly Rectangle[]
  /** Least distance between panels [m]. */
  readonly gap: number
}

export interface Place {
  readonly x_m: number
  readonly y_m: number
  /** The panel's length runs along the surface's width. */
  readonly turned: boolean
}

export interface Packing {
  readonly places: readonly Place[]
  /** False where the search was cut off, so that more might fit. */
  readonly proven: boolean
}

/**
 * The most panels of one size on a surface around its keep-outs, both ways round, edges parallel to the surface's. Exact:
 * any layout can be pushed towards the corner until each panel touches something, so only such places are tried, from
 * left to right, and a branch is left when the free area cannot better the best layout. Surfaces for dozens of panels
 * take too long for that; there the best layout found in a fixed number of steps is returned as not proven.
 *
 * @param panel   outer size [m], positive
 * @param wanted  stop at so many
 * @source normal patterns: N. Christofides, C. Whitlock, Operations Research 25 (1977) 30-44 (from memory)
 */
export function packPanels(
  surface: SurfaceShape,
  panel: { readonly length: number; readonly width: number },
  wanted = Infinity,
): Packing {
  const { gap, keepOut } = surface
  const ways = waysRound(panel)
  const xs = positions(
    surface.length,
    ways.map((w) => w.dx),
    keepOut.map((k) => k.x + k.length),
    gap,
  )
  const ys = positions(
    surface.width,
    ways.map((w) => w.dy),
    keepOut.map((k) => k.y + k.width),
    gap,
  )
  const points = xs.flatMap((x, column) => ys.flatMap((y) => pointAt(x, y, column)))
  const area = (panel.length + gap) * (panel.width + gap)
  const free = xs.map((x) => freeArea(surface, x))
  const placed: Box[] = []
  let best: readonly Box[] = []
  let steps = 0
  search(0)
  return {
    places: best.map(({ x, y, turned }) => ({ x_m: x, y_m: y, turned })),
    proven: wanted <= best.length || (steps < limit && Math.max(xs.length, ys.length) < mostPositions),
  }

  function search(from: number): void {
    if (best.length < placed.length) best = [...placed]
    for (let i = from; i < points.length; i++) {
      if (limit <= ++steps || wanted <= best.length || placed.length + room(i) <= best.length) return
      for (const box of points[i]!.boxes) {
        if (!fits(box)) continue
        placed.push(box)
        search(i + 1)
        placed.pop()
        if (limit <= steps || wanted <= best.length) return
      }
    }
  }

  /** How many more could lie at the point or right of it, by area alone. */
  function room(i: number): number {
    const { x, column } = points[i]!
    let left = free[column]!
    for (const box of placed) left -= Math.max(0, box.x + box.dx + gap - x) * (box.dy + gap)
    return Math.floor(left / area + 1e-9)
  }

  /** A point with the panels that can start there on the bare surface; none is no point. */
  function pointAt(x: number, y: number, column: number) {
    const boxes = ways
      .map((way) => ({ x, y, ...way }))
      .filter((box) => box.x + box.dx <= surface.length + tiny && box.y + box.dy <= surface.width + tiny)
      .filter((box) => !keepOut.some((k) => overlap(box, boxOf(k), 0)))
    return boxes.length > 0 ? [{ x, column, boxes }] : []
  }

  function fits(box: Box): boolean {
    return !placed.some((other) => overlap(box, other, gap)) && touchesLeft(box)
  }

  function touchesLeft({ x, y, dy }: Box): boolean {
    if (x === 0) return true
    return (
      keepOut.some((k) => near(k.x + k.length, x) && k.y < y + dy && y < k.y + k.width) ||
      placed.some((p) => near(p.x + p.dx + gap, x) && p.y < y + dy + gap && y < p.y + p.dy + gap)
    )
  }
}

interface Way {
  readonly dx: number
  readonly dy: number
  readonly turned: boolean
}
interface Box extends Way {
  readonly x: number
  readonly y: number
}

const limit = 20_000
const mostPositions = 300
/** A tenth of a millimetre is no reason to say that a panel does not fit. */
const tiny = 1e-4
const near = (a: number, b: number) => Math.abs(a - b) < 1e-9

function waysRound({ length, width }: { length: number; width: number }): readonly Way[] {
  const along = { dx: length, dy: width, turned: false }
  return length === width ? [along] : [along, { dx: width, dy: length, turned: true }]
}

/**
 * Where a panel can start when it is pushed against an edge, a keep-out or others, in ascending order; the first few hundred
 * where a surface is that much larger than its panels.
 */
function positions(size: number, lengths: readonly number[], edges: readonly number[], gap: number): readonly number[] {
  const least = Math.min(...lengths)
  const found: number[] = []
  const waiting = [0, ...edges.filter((edge) => edge > 0)]
  while (waiting.length > 0 && found.length < mostPositions) {
    const next = waiting.indexOf(Math.min(...waiting))
    const [at] = waiting.splice(next, 1) as [number]
    if (size + tiny < at + least || (found.length > 0 && near(found.at(-1)!, at))) continue
    found.push(at)
    for (const length of lengths) if (at + length + gap > at) waiting.push(at + length + gap)
  }
  return found
}

/** Area right of x that no keep-out takes; overlapping keep-outs are counted once too often at most, so the gap is added in full. */
function freeArea({ length, width, keepOut, gap }: SurfaceShape, x: number): number {
  const whole = (length + gap - x) * (width + gap)
  return keepOut.reduce((left, k, i) => {
    const start = Math.max(x, k.x, 0)
    const taken = Math.max(0, Math.min(length, k.x + k.length) - start)
    const high = Math.max(0, Math.min(width, k.y + k.width) - Math.max(0, k.y))
    const apart = keepOut.slice(0, i).every((other) => !overlap(boxOf(k), boxOf(other), 0))
    return apart ? left - Math.max(0, taken - gap) * Math.max(0, high - gap) : left
  }, whole)
}

const boxOf = (k: Rectangle) => ({ x: k.x, y: k.y, dx: k.length, dy: k.width })

function overlap(a: Omit<Box, 'turned'>, b: Omit<Box, 'turned'>, gap: number): boolean {
  const e = 1e-9
  return (
    a.x + e < b.x + b.dx + gap && b.x + e < a.x + a.dx + gap && a.y + e < b.y + b.dy + gap && b.y + e < a.y + a.dy + gap
  )
}
