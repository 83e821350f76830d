import { blocks } from './blocks.ts'
import { upperBound } from './bound.ts'
import { searchAll } from './exact.ts'
import { fiveBlocks } from './five-blocks.ts'
import { positionsOf } from './positions.ts'
import { staircase } from './staircase.ts'
import { gridOf, type Box, type Grid, type SurfaceShape } from './surface.ts'
import { views } from './views.ts'
import { inWindows } from './windows.ts'

export interface LaidPanel {
  readonly x_m: number
  readonly y_m: number
  /** The panel's length runs along the surface's width. */
  readonly turned: boolean
}

export interface Packing {
  readonly laid: readonly LaidPanel[]
  /** False where more might fit than were found. */
  readonly proven: boolean
}

/**
 * The most panels of one size on a surface around its keep-outs, both ways round, edges parallel to the surface's: blocks of
 * like panels first, and where a bound leaves room for more, staircases from each side, then a search of all layouts; where that
 * takes too long, more staircases, of the whole and of parts. Each ends after a fixed number of steps, so the same surface always
 * gives the same layout.
 *
 * A surface is often packed once, so that little of this is ever compiled: the loops below build no list and call no function for
 * what an operator says (`| 0` for a count rounded down), and numbers and objects keep one shape.
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
  const clear = fiveBlocks(
    grid.orientations,
    grid.length,
    grid.width,
    grid.blocked.length === 0 ? clearSteps : partSteps,
  )
  let best = blocks(grid, { xs: thinned(at.xs), ys: thinned(at.ys) }, clear, enough)
  best = staircases(grid, best, enough, narrow)
  if (enough <= best.length) return packing(best, true)
  if (at.complete) {
    const exact = searchAll(grid, at, { known: best.length, enough, steps: Math.floor(exactSteps / bound) })
    best = exact.boxes ?? best
    if (exact.proven) return packing(best, true)
  }
  if (grid.blocked.length > 0) {
    best = staircases(grid, best, enough, Math.min(wide, Math.floor(staircaseSteps / bound ** 1.5)))
    best = inWindows(grid, best, { enough, rounds, width: narrow })
  }
  return packing(best, enough <= best.length)

  function packing(boxes: readonly Box[], proven: boolean): Packing {
    const laid = boxes.slice(0, wanted).map(({ x, y, turned }) => ({ x_m: x / 1e6, y_m: y / 1e6, turned }))
    return { laid, proven: proven && (isWhole || wanted <= boxes.length) }
  }
}

function staircases(grid: Grid, start: readonly Box[], enough: number, width: number): readonly Box[] {
  let best = start
  if (width < narrow) return best
  for (const view of views) {
    const { grid: seen, back } = view(grid)
    best = staircase(seen, { known: best.length, enough, width })?.map(back) ?? best
  }
  return best
}

/** Cuts evenly spread; the first is the edge. */
function thinned(all: readonly number[]): readonly number[] {
  const step = Math.ceil(all.length / 24)
  return all.filter((_, i) => i % step === 0)
}

/** A surface is looked at for so many short sides of a panel each way: a length typed in the wrong unit is no reason to work for hours. */
const mostSides = 100

/** Steps of the searches, and staircases that go on: what a keystroke has time for. Those that more panels make dearer are shared out among the panels. */
const clearSteps = 150_000
const partSteps = 10_000
const exactSteps = 150_000
const staircaseSteps = 12_000
const [narrow, wide] = [3, 60]
const rounds = 4
