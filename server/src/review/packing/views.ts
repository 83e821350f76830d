import { boxAt, type Blocked, type Box, type Grid } from './surface.ts'

/** A surface as seen from another corner, and back. */
export interface View {
  readonly grid: Grid
  back(box: Box): Box
}

/** From each end of the surface along its length, and across: what starts at one end leaves its gaps at the other. */
export const views: readonly ((grid: Grid) => View)[] = [
  (grid) => ({ grid, back: (box) => box }),
  mirrored,
  (grid) => ({ grid: transposed(grid), back: turn }),
  (grid) => {
    const { grid: seen, back } = mirrored(transposed(grid))
    return { grid: seen, back: (box) => turn(back(box)) }
  },
]

function mirrored({ length, width, orientations, blocked, apart }: Grid): View {
  const flip = ({ x0, x1, y0, y1 }: Blocked) => ({ x0: length - x1, x1: length - x0, y0, y1 })
  return {
    grid: { length, width, orientations, blocked: blocked.map(flip), apart: apart.map(flip) },
    back: (box) => boxAt(length - box.x - box.dx, box.y, box),
  }
}

function transposed({ length, width, orientations: ways, blocked, apart }: Grid): Grid {
  const swap = ({ x0, x1, y0, y1 }: Blocked) => ({ x0: y0, x1: y1, y0: x0, y1: x1 })
  return {
    length: width,
    width: length,
    orientations: ways.map(({ dx, dy, turned }) => ({ dx: dy, dy: dx, turned })),
    blocked: blocked.map(swap),
    apart: apart.map(swap),
  }
}

const turn = ({ x, y, dx, dy, turned }: Box): Box => boxAt(y, x, { dx: dy, dy: dx, turned })
