import type { Diagnosis } from './causes.ts'
import type { Doubt } from './doubts.ts'
import type { MeasuredString } from './string.ts'

/** One measured string and what is thought of it. */
export interface MeasuredFindings {
  readonly string: MeasuredString
  /** Whether a typing mistake explains one of its values. */
  readonly isMistyped: boolean
  /** Values that are low. */
  readonly low: readonly Doubt[]
  /** Values that are higher than the records can give. */
  readonly high: readonly Doubt[]
  readonly diagnosis: Diagnosis | null
}
