import type { RuleFacts, Severity } from '../findings/finding.ts'
import type { Field } from '../records/field.ts'

/**
 * A plausibility rule over one record. `check` is pure and gets fields that may be missing; it answers null when all is
 * well or when something that it needs is missing.
 */
export interface Rule<Record, About = undefined> extends RuleFacts {
  check(record: Record, about: About): Doubt | readonly Doubt[] | null
}

/** What a rule found. The first suspect is where it is shown; the others become related places. */
export interface Doubt {
  /** One sentence: what is wrong, by how much, what would be plausible. */
  readonly message: string
  readonly suspects: readonly [Field<unknown>, ...Field<unknown>[]]
  /** Where the rule's own severity does not hold for this degree of deviation. */
  readonly severity?: Severity
  /** Fields of other files that belong to it. */
  readonly elsewhere?: readonly { readonly path: string; readonly field: Field<unknown> }[]
  /** A fix that the rule alone knows. */
  readonly correction?: Proposal
}

/** A field should read `text`. */
export interface Proposal {
  readonly field: Field<unknown>
  readonly text: string
  readonly why: string
  readonly certainty: 'same' | 'guess'
  readonly also?: readonly { readonly field: Field<unknown>; readonly text: string }[]
}
