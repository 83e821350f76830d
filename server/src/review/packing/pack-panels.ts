import { blocks } from './blocks.ts'
import { upperBound } from './bound.ts'
import { searchAll } from './exact.ts'
import { improve } from './local-search.ts'
import { positionsOf } from './positions.ts'
import { gridOf, type Box, type SurfaceShape } from './surface.ts'

export interface Place {
  readonly x_m: number
  readonly y_m: number
  /** The panel's length runs along the surface's width. */
  readonly turned: boolean
}

export interface Packing {
  readonly places: readonly Place[]
  /** False where more might fit than were found. */
  readonly proven: boolean
}

/**
 * The most panels of one size on a surface around its keep-outs, both ways round, edges parallel to the surface's: blocks of
 * like panels first, and where a bound leaves room for more, a search of all layouts, and where that takes too long, a
 * search around the best layout. Each ends after a fixed number of steps, so the same surface always gives the same layout.
 *
 * @param panel   outer size [m], positive
 * @param wanted  stop at so many
 */
export function packPanels(
  surface: SurfaceShape,
  panel: { readonly length: number; readonly width: number },
  wanted = Infinity,
): Packing {
  const side = mostSides * (Math.min(panel.length, panel.width) + surface.gap)
  const shape = { ...surface, length: Math.min(surface.length, side), width: Math.min(surface.width, side) }
  const isWhole = shape.length === surface.length && shape.width === surface.width
  const grid = gridOf(shape, panel)
  const bound = upperBound(grid)
  const enough = Math.min(wanted, bound)
  const at = positionsOf(grid)
  let best = blocks(grid, at.xs, at.ys, enough)
  if (enough <= best.length || !at.complete) return packing(best, enough <= best.length)
  const exact = searchAll(grid, at, { known: best.length, enough, steps: exactSteps })
  best = exact.boxes ?? best
  if (exact.proven) return packing(best, true)
  const found = improve(grid, at, best, { enough, steps: localSteps })
  return packing(found, enough <= found.length)

  function packing(boxes: readonly Box[], proven: boolean): Packing {
    const places = boxes.slice(0, wanted).map(({ x, y, turned }) => ({ x_m: x / 1e6, y_m: y / 1e6, turned }))
    return { places, proven: proven && (isWhole || wanted <= boxes.length) }
  }
}

/** A surface is looked at for so many short sides of a panel each way: a length typed in the wrong unit is no reason to work for hours. */
const mostSides = 100

/** Steps of the searches: what a keystroke has time for. */
const exactSteps = 20_000
const localSteps = 1_000
