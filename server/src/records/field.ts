import type { Quantity } from '../quantities/quantity.ts'
import type { Span } from '../text/span.ts'

/** What a person typed, what it means, and where it stands. */
export interface Field<T = number> {
  readonly pointer: string
  /** As typed, without quotes. */
  readonly text: string
  /** A number is in the base unit of its dimension. */
  readonly value: T
  readonly span: Span
}

/** A number with its unit: `value` is `quantity.value`. */
export interface Measure extends Field<number> {
  readonly quantity: Quantity
}
