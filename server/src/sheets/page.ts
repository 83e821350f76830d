/** A run of text as a PDF draws it. Points from the top left of the upright page; `y` is the baseline. */
export interface Run {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly width: number
  readonly size: number
  readonly font: string
}

/** Degrees clockwise. */
export type Turn = 0 | 90 | 180 | 270

/** One page of a sheet with its text upright. */
export interface Page {
  readonly number: number
  /** Sizes after it was turned. */
  readonly width: number
  readonly height: number
  /** By how much it is turned against how it is shown. */
  readonly turn: Turn
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

/** A box of the upright page as it is on the page as shown. */
export function asShown([x, y, w, h]: Box, { width, height, turn }: Page): Box {
  if (turn === 90) return [y, width - x - w, h, w]
  if (turn === 180) return [width - x - w, height - y - h, w, h]
  return turn === 270 ? [height - y - h, x, h, w] : [x, y, w, h]
}

/** The box around several boxes. */
export function around(boxes: readonly Box[]): Box {
  const left = Math.min(...boxes.map((b) => b[0]))
  const top = Math.min(...boxes.map((b) => b[1]))
  const right = Math.max(...boxes.map((b) => b[0] + b[2]))
  const bottom = Math.max(...boxes.map((b) => b[1] + b[3]))
  return [left, top, right - left, bottom - top].map((n) => Math.round(n * 10) / 10) as unknown as Box
}
