import type { Finding } from '../findings/finding.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Value } from '../values/value.ts'
import type { Review } from './review.ts'

/** A finding that a person let stand, with the reason. */
export interface Accepted {
  readonly finding: Finding
  readonly because: string
}

/** Everything that is known about one file. Values are computed when they are asked for. */
export interface Checked extends ReadFile {
  /** All findings in file order, with acceptances and the library's severities applied. */
  readonly findings: readonly Finding[]
  readonly accepted: readonly Accepted[]
  /** A system's figures; null for other kinds. */
  readonly review: Review | null
  /** The derived values of a panel record and the figures of a system; empty for other kinds. */
  values(): readonly Value[]
}
