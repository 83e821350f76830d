import type { Said } from '../../findings/message.ts'

/** One way in which the record may have been meant. */
export interface Candidate {
  readonly fields: readonly number[]
  readonly values: readonly number[]
  /** Half a unit of the last digit of the text that it would have. */
  readonly halves?: readonly number[]
  /** The texts that the fields should read; empty where only the size of the value is known. */
  readonly texts: readonly string[]
  /** Fields outside the model that the same slip changed. */
  readonly also?: readonly { readonly pointer: string; readonly text: string }[]
  /** It is what the arithmetic of the other fields asks for, whatever happened to the value. */
  readonly isComputed?: true
  readonly why: Said
  /** Logarithm of the chance of this slip, and of the printed form that it would restore. */
  readonly prior: number
}

/** Seventeen kinds of slip and fourteen fields, taken as equally likely: logarithms of the chance of a kind, and of one in a field. */
export const ofKind = -Math.log(17)
export const ofField = ofKind - Math.log(14)

/**
 * What published lists show at times, another value or cell count, must be surer than slips of the hand,
 * which they hardly show. Estimated: as unseen halves of the open ratings have them.
 */
export const likeTrueRecords = 1.3
