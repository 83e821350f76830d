import type { Span } from '../text/span.ts'
import { phraseInWords, type Phrase } from '../wording/phrase.ts'
import type { Correction, Finding, Related, RuleFacts, Severity } from './finding.ts'
import { shortened } from './shortened.ts'

/** A correction whose reason is not yet in words. */
export type Proposed = Omit<Correction, 'why' | 'sentence'> & { readonly why: Phrase }

/** A finding of a rule, at a place. */
export function finding(
  rule: RuleFacts,
  place: { readonly pointer: string; readonly span: Span },
  sentence: Phrase,
  more: {
    readonly severity?: Severity | undefined
    readonly related?: readonly { readonly span: Span; readonly message: Phrase }[]
    readonly corrections?: readonly Proposed[]
  } = {},
): Finding {
  return {
    rule: rule.id,
    severity: more.severity ?? rule.severity,
    message: shortened(phraseInWords(sentence)),
    sentence,
    pointer: place.pointer,
    span: place.span,
    reason: rule.reason,
    source: rule.source,
    related: (more.related ?? []).map(({ span, message }): Related => ({
      span,
      message: shortened(phraseInWords(message)),
      sentence: message,
    })),
    corrections: (more.corrections ?? []).map((one) => ({ ...one, why: phraseInWords(one.why), sentence: one.why })),
  }
}
