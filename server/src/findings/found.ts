import type { Edit, Span } from '../text/span.ts'
import type { Phrase } from '../wording/phrase.ts'
import type { RuleFacts, Severity } from './finding.ts'
import type { Messages, Said, Sayable } from './message.ts'

/** What a rule is and what it says. */
export interface Speaker extends RuleFacts {
  readonly messages: Messages
}

/** A finding as data, before it is in words. */
export interface Found {
  readonly rule: Speaker
  readonly severity: Severity
  /** What is wrong, by the rule's own templates, without what would be right and without the full stop. */
  readonly claim: Said
  /** The sentence around it, which takes the claim as `{claim}`; the claim alone where there is none. */
  readonly sentence?: Said
  /** JSON pointer of the field; '' for the file as a whole. */
  readonly pointer: string
  readonly span: Span
  /** Other fields that it speaks of. */
  readonly places: readonly Place[]
  /** The best fix, then others worth offering. */
  readonly fixes: readonly Fix[]
  /** Of a mistake of our own: its type and the places in the program on the way to it. */
  readonly trace?: string
}

/** A field by its place and as it was typed. */
export interface Place {
  readonly pointer: string
  readonly text: string
  readonly span: Span
  /** Set when it is in another file: its path as the library knows it. */
  readonly path?: string
  /** What is said of it, where that is not its name and text. */
  readonly sentence?: Phrase
}

/** A correction as data. */
export interface Fix {
  readonly pointer: string
  readonly text: string
  readonly why: Said
  readonly certainty: 'same' | 'guess'
  readonly edits: readonly Edit[]
  readonly also?: readonly { readonly pointer: string; readonly text: string }[]
}

/** A finding that says one of a rule's own messages. */
export function foundAt<const M extends Messages>(
  rule: Speaker & { readonly messages: M },
  { pointer, span }: { readonly pointer: string; readonly span: Span },
  said: Sayable<M>,
  more: { readonly severity?: Severity; readonly places?: readonly Place[]; readonly fixes?: readonly Fix[] } = {},
): Found {
  const { severity = rule.severity, places = [], fixes = [] } = more
  return { rule, severity, claim: { of: rule, ...said }, pointer, span, places, fixes }
}
