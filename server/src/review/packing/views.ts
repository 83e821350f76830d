import type { Blocked, Box, Grid } from './surface.ts'

/** A surface as seen from another corner, and back. */
export interface View {
  readonly grid: Grid
  back(box: Box): Box
}

/** From each end of the surface along its length, and across: what starts at one end leaves its gaps at the other. */
export function viewsOf(grid: Grid): readonly View[] {
  const across = transposed(grid)
  return [
    { grid, back: (box) => box },
    mirrored(grid),
    { grid: across, back: turn },
    { grid: mirrored(across).grid, back: (box) => turn(mirrored(across).back(box)) },
  ]
}

function mirrored(grid: Grid): View {
  const { length } = grid
  const flip = ({ x0, x1, y0, y1 }: Blocked) => ({ x0: length - x1, x1: length - x0, y0, y1 })
  return {
    grid: { ...grid, blocked: grid.blocked.map(flip), apart: grid.apart.map(flip) },
    back: (box) => ({ ...box, x: length - box.x - box.dx }),
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

const turn = ({ x, y, dx, dy, turned }: Box): Box => ({ x: y, y: x, dx: dy, dy: dx, turned })
