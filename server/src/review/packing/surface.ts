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

/** A panel with one side along x, in whole micrometres, the gap behind it included. */
export interface Orientation {
  readonly dx: number
  readonly dy: number
  readonly turned: boolean
}

/** A placed panel [µm]. */
export interface Box extends Orientation {
  readonly x: number
  readonly y: number
}

/** All boxes are made here, with their fields in one order: what is compiled for one then holds for all. */
export const boxAt = (x: number, y: number, { dx, dy, turned }: Orientation): Box => ({ x, y, dx, dy, turned })

/**
 * What no panel may cover, open on all sides [µm]. One that is narrower than the gap ends before it starts: no part lies in it, and
 * still no panel fits across.
 */
export interface Blocked {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}

/**
 * The task in whole micrometres, so that equal places are equal numbers. Panels and surface are both longer by the gap,
 * which leaves panels that may touch; a keep-out needs no gap, so it starts that much later.
 */
export interface Grid {
  readonly length: number
  readonly width: number
  readonly orientations: readonly Orientation[]
  readonly blocked: readonly Blocked[]
  /** Keep-outs that overlap none before them, for sums of areas. */
  readonly apart: readonly Blocked[]
}

/** A tenth of a millimetre is no reason to say that a panel does not fit [µm]. */
const tolerance = 100

/** A whole number that V8 keeps as a small integer where it is one: code made for those is thrown away when others come. */
export function rounded(value: number): number {
  const whole = Math.round(value)
  const small = whole | 0
  return small === whole ? small : whole
}

const micrometres = (metres: number) => rounded(metres * 1e6)

export function gridOf(surface: SurfaceShape, panel: { readonly length: number; readonly width: number }): Grid {
  const gap = micrometres(surface.gap)
  const size = (metres: number) => micrometres(metres) + gap
  const [along, across] = [size(panel.length), size(panel.width)]
  const straight = { dx: along, dy: across, turned: false }
  const length = size(surface.length) + tolerance
  const width = size(surface.width) + tolerance
  const blocked = surface.keepOut
    .map((k) => ({
      x0: micrometres(k.x) + gap,
      x1: micrometres(k.x + k.length),
      y0: micrometres(k.y) + gap,
      y1: micrometres(k.y + k.width),
    }))
    .filter((k) => 0 < k.x1 && k.x0 < length && 0 < k.y1 && k.y0 < width)
  return {
    length,
    width,
    orientations: along === across ? [straight] : [straight, { dx: across, dy: along, turned: true }],
    blocked,
    apart: blocked.filter((k, i) => blocked.slice(0, i).every((other) => sharedArea(k, other) === 0)),
  }
}

/** Whether a panel in a part can come to lie on a keep-out. */
export const meets = (part: Blocked, k: Blocked): boolean =>
  part.x0 < k.x1 && k.x0 < part.x1 && part.y0 < k.y1 && k.y0 < part.y1

export function sharedArea(a: Blocked, b: Blocked): number {
  const x = (a.x1 < b.x1 ? a.x1 : b.x1) - (a.x0 < b.x0 ? b.x0 : a.x0)
  const y = (a.y1 < b.y1 ? a.y1 : b.y1) - (a.y0 < b.y0 ? b.y0 : a.y0)
  return x > 0 && y > 0 ? x * y : 0
}

/** Whether a box lies on the surface and on no keep-out. */
export function isFree({ length, width, blocked }: Grid, { x, y, dx, dy }: Box): boolean {
  if (length < x + dx || width < y + dy) return false
  for (let i = 0; i < blocked.length; i++) {
    const k = blocked[i]!
    if (x < k.x1 && k.x0 < x + dx && y < k.y1 && k.y0 < y + dy) return false
  }
  return true
}

export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.dx && b.x < a.x + a.dx && a.y < b.y + b.dy && b.y < a.y + a.dy
