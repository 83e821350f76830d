import type { Said } from '../findings/message.ts'
import type { Evidence } from './evidence.ts'

/** A correction of one field, or of two that were typed in each other's place. */
export interface SlipFix {
  readonly pointer: string
  /** The whole text that the field should read. */
  readonly text: string
  readonly also?: readonly { readonly pointer: string; readonly text: string }[]
  /** Completes "22.1 V: decimal point moved". */
  readonly why: Said
  /** Share of the belief that this is what was meant, from 0 to 1. */
  readonly certainty: number
}

/** What is wrong is that another model's value stands here. */
export interface Borrowed {
  /** The model whose value it is. */
  readonly from?: Evidence
}

export type SlipVerdict =
  | { readonly kind: 'consistent' }
  | (SlipFix &
      Borrowed & {
        readonly kind: 'slip'
        /** Records of the family that read as the correction does. */
        readonly siblings: readonly Evidence[]
        readonly alternatives: readonly SlipFix[]
        /** One of the alternatives that is about as likely, so that both are named. */
        readonly rival?: SlipFix
        /** True lists carry just this contradiction now and then, so that it is unusual rather than unlikely. */
        readonly isSeenInTrueRecords: boolean
        /** How strongly the record speaks of a slip: natural logarithm of the odds. */
        readonly odds: number
      })
  | (Borrowed & {
      readonly kind: 'disagree'
      /** Most suspect first. */
      readonly pointers: readonly string[]
      /** Records of the family that read otherwise. */
      readonly siblings: readonly Evidence[]
      readonly odds: number
    })
