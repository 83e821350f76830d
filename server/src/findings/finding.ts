import type { Edit, Span } from '../text/span.ts'
import type { Phrase } from '../wording/phrase.ts'

/** error: impossible or unsafe; warning: very unlikely; information: unusual; hint: missing. */
export type Severity = 'error' | 'warning' | 'information' | 'hint'

/** A change that would fix the file. Only `same` may be applied without a person looking. */
export interface Correction {
  /** JSON pointer of the field that would change. */
  readonly pointer: string
  /** What that field should read, whole. */
  readonly text: string
  /** Completes "22.1 V: decimal point moved". */
  readonly why: string
  /** The same as data. */
  readonly sentence?: Phrase
  /** `same` keeps the meaning (18,6 V to 18.6 V); `guess` changes a number, so a person must choose it. */
  readonly certainty: 'same' | 'guess'
  /** The characters to change; usually one edit, two for fields typed in each other's place. */
  readonly edits: readonly Edit[]
  /** Further fields of the same correction (a swap). */
  readonly also?: readonly { readonly pointer: string; readonly text: string }[]
}

export interface Related {
  readonly span: Span
  readonly message: string
  /** The same as data. */
  readonly sentence?: Phrase
  /** Set when the place is in another file: its path as the library knows it. */
  readonly path?: string
}

/** One thing that is wrong, unlikely, unusual or missing, with its place. */
export interface Finding {
  readonly rule: string
  readonly severity: Severity
  /** One sentence with the numbers in it. */
  readonly message: string
  /** The same as data, where reading the file found it. */
  readonly sentence?: Phrase
  /** JSON pointer of the field; '' for the file as a whole. */
  readonly pointer: string
  readonly span: Span
  readonly reason: string
  readonly source: string
  readonly related: readonly Related[]
  /** The best fix, and others worth offering behind it. */
  readonly corrections: readonly Correction[]
  /** Of a mistake of our own: what was thrown, and the places in the program on the way to it. For a log; it says nothing of the record. */
  readonly trace?: string
}

/** What stays the same about every finding of one rule; `explain` and the reference page are made of it. */
export interface RuleFacts {
  /** Names the fault, so that `accept voc-below-vmp: …` reads as a sentence. */
  readonly id: string
  readonly severity: Severity
  /** A sentence for an installer: why this matters. */
  readonly reason: string
  /** Published source, `common practice, no source`, or a title marked `from memory`. */
  readonly source: string
}
