/** A run of text as a PDF draws it. Points from the top left of the page as shown; `y` is the baseline. */
export interface Run {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly width: number
  readonly size: number
  readonly font: string
}

/** One page of a sheet as it is shown. */
export interface Page {
  readonly number: number
  readonly width: number
  readonly height: number
  readonly runs: readonly Run[]
}

/** `[x, y, width, height]` in points from the top left of the page as shown. */
export type Box = readonly [x: number, y: number, width: number, height: number]

/** The text of one cell, or of one line of it. */
export interface Piece extends Run {
  readonly page: number
  readonly right: number
  /** The baseline of the last line, of a cell with several. */
  readonly last?: number
}

export const boxOf = ({ x, y, width, size }: Run): Box => [x, y - 0.9 * size, width, 1.2 * size]

/** The box around several boxes. */
export function around(boxes: readonly Box[]): Box {
  const left = Math.min(...boxes.map((b) => b[0]))
  const top = Math.min(...boxes.map((b) => b[1]))
  const right = Math.max(...boxes.map((b) => b[0] + b[2]))
  const bottom = Math.max(...boxes.map((b) => b[1] + b[3]))
  return [left, top, right - left, bottom - top].map((n) => Math.round(n * 10) / 10) as unknown as Box
}
