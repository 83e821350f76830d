import type { Grid, Orientation } from './surface.ts'

/** Of each row that lies behind the other: where it is free, start and end in turn [µm]. */
type Rows = readonly (readonly number[])[]

/** Rows (columns) as deep as a panel that lies this way round, from a first one on to the edge of the surface. */
export type FreeRows = (way: Orientation, inRows: boolean, first: number) => Rows

/** What is free between the keep-outs, as thousands of parts of a surface share the rows of a few. */
export function freeRows(grid: Grid): FreeRows {
  const known = new Map<number, Rows>()
  return (way, inRows, first) => {
    const key = 4 * first + (way.turned ? 2 : 0) + (inRows ? 1 : 0)
    const rows = known.get(key) ?? rowsFrom(grid, way, inRows, first)
    known.set(key, rows)
    return rows
  }
}

function rowsFrom({ length, width, blocked }: Grid, { dx, dy }: Orientation, inRows: boolean, first: number): Rows {
  const [depth, edge, end] = inRows ? [dy, width, length] : [dx, length, width]
  const sides = blocked
    .map(({ x0, x1, y0, y1 }) =>
      inRows ? { near: x0, far: x1, above: y0, below: y1 } : { near: y0, far: y1, above: x0, below: x1 },
    )
    .sort((a, b) => a.near - b.near)
  const rows: number[][] = []
  for (let row = first; row + depth <= edge; row += depth) {
    const free = [0]
    let from = 0
    for (const { near, far, above, below } of sides) {
      if (below <= row || row + depth <= above || far <= from) continue
      free.push(Math.max(from, near), far)
      from = far
    }
    free.push(Math.max(from, end))
    rows.push(free)
  }
  return rows
}
