import type { Piece } from './page.ts'

/** A label with the values that belong to it, from left to right. */
export interface Row {
  readonly label: string
  readonly labels: readonly Piece[]
  readonly values: readonly Piece[]
  readonly unit: string | null
  readonly y: number
  readonly size: number
}
