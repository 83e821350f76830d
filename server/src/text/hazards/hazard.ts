import { phrase, type Phrase } from '../../wording/phrase.ts'
import type { Edit, Span } from '../span.ts'
import { isJson, quotedScalar } from '../spelling.ts'
import type { Node, SyntaxProblem, Tree } from '../tree.ts'

/** One way in which YAML damages what a person typed, with everything that stays the same about it. */
export interface HazardRule {
  readonly id: string
  readonly severity: 'error' | 'warning' | 'information'
  readonly reason: string
  readonly source: string
  find(tree: Tree): readonly Hazard[]
}

/** The damage at one place. */
export interface Hazard {
  readonly message: Phrase
  /** Where it is not that of the rule. */
  readonly severity?: 'hint'
  readonly pointer: string
  readonly span: Span
  /** Fields whose value must not be computed with, and which must not be called missing. */
  readonly spoils: readonly string[]
  /** Junk keys that later checks must not call unknown. */
  readonly swallows: readonly string[]
  /** Where YAML's own complaints are said by this hazard. */
  readonly explains: readonly Span[]
  readonly related: readonly { readonly span: Span; readonly message: Phrase }[]
  /** The best one first. */
  readonly fixes: readonly Fix[]
}

export interface Fix {
  readonly edits: readonly Edit[]
  /** Completes "22.1 V: ...". */
  readonly why: Phrase
  /** `same` keeps what was meant for sure; `guess` a person must choose. */
  readonly certainty: 'same' | 'guess'
  /** What the field would read. */
  readonly text: string
}

export const yamlSource = (section: string) => `YAML 1.2.2, section ${section}`

/** A hazard that spoils its own field and explains the complaints on its own characters. */
export function hazard(found: Pick<Hazard, 'message' | 'pointer' | 'span'> & Partial<Hazard>): Hazard {
  return { spoils: [found.pointer], swallows: [], explains: [found.span], related: [], fixes: [], ...found }
}

/** Whether `problem` is what `hazard` has already said in better words. */
export function explains({ explains }: Hazard, { span }: Pick<SyntaxProblem, 'span'>): boolean {
  return explains.some(({ start, end }) => start <= span.start && span.start <= end)
}

/** Quotes make the text whole again, whatever is in it. */
export function quoting(tree: Tree, { span }: Node, text: string, certainty: Fix['certainty']): Fix {
  const quoted = isJson(tree) ? JSON.stringify(text) : quotedScalar(text)
  return { edits: [{ span, text: quoted }], why: phrase`the whole text in quotes`, certainty, text }
}

/** Whether a text begins as a number does: `5.92 A`, `-0.38 %/K`, `.5 A`, `±3 %`. */
export function beginsAsNumber(text: string): boolean {
  return /^[-+±−–~]?\s*[.,]?\d/.test(text)
}
