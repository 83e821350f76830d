import type { Span } from '../text/span.ts'
import type { RuleFacts, Severity } from './finding.ts'
import type { Messages, Said, Sayable } from './message.ts'

/**
 * A plausibility rule over one record, or over a system. `check` is pure and gets fields that may be missing; it answers
 * null when all is well or when something that it needs is missing.
 */
export interface Rule<Record, About = undefined> extends RuleFacts {
  /** What it says, with placeholders: one sentence without its full stop. */
  readonly messages: Messages
  check(record: Record, about: About): Doubt | readonly Doubt[] | null
}

/** A field that a rule speaks of. */
export interface Suspect {
  readonly pointer: string
  readonly text: string
  readonly span: Span
}

/** What a rule found, as data. The first suspect is where it is shown; the others become related places. */
export interface Doubt extends Said {
  readonly suspects: readonly [Suspect, ...Suspect[]]
  /** Where the rule's own severity does not hold for this degree of deviation. */
  readonly severity?: Severity | undefined
  /** Fields of other files that belong to it. */
  readonly elsewhere?: readonly { readonly path: string; readonly field: Suspect }[] | undefined
  /** A fix that the rule alone knows. */
  readonly correction?: Proposal | undefined
  /** Set where the message itself says what would be right. */
  readonly saysFix?: true
}

/** A field should read `text`. */
export interface Proposal {
  readonly field: Suspect
  readonly text: string
  /** Completes "22.1 V: decimal point moved". */
  readonly why: Said
  readonly certainty: 'same' | 'guess'
  readonly also?: readonly { readonly field: Suspect; readonly text: string }[]
}

/** A rule as it is written: what `check` says is one of its own messages, with all of that message's placeholders. */
export interface RuleOf<Record, About, M extends Messages> extends RuleFacts {
  readonly messages: M
  check(record: Record, about: About): DoubtOf<M> | readonly DoubtOf<M>[] | null
}

type DoubtOf<M extends Messages> = Sayable<M> & Omit<Doubt, keyof Said>

/** Makes the writer of rules over one kind of record: `export const vocBelowVmp = panelRule({ … })`. */
export const ruleOver =
  <Record, About = undefined>() =>
  <const M extends Messages>(rule: RuleOf<Record, About, M>): Rule<Record, About> =>
    rule as Rule<Record, About>
