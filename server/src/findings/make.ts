import type { Span } from '../text/span.ts'
import { toldInWords, type Told } from '../wording/told.ts'
import type { Correction, Finding, Related, RuleFacts, Severity } from './finding.ts'
import { shortened } from './shortened.ts'

/** A correction whose reason is not yet in words. */
export type Proposed = Omit<Correction, 'why' | 'told'> & { readonly why: Told }

/** A finding of a rule, at a place. */
export function finding(
  rule: RuleFacts,
  place: { readonly pointer: string; readonly span: Span },
  told: Told,
  more: {
    readonly severity?: Severity | undefined
    readonly related?: readonly { readonly span: Span; readonly message: Told }[]
    readonly corrections?: readonly Proposed[]
  } = {},
): Finding {
  return {
    rule: rule.id,
    severity: more.severity ?? rule.severity,
    message: shortened(toldInWords(told)),
    told,
    pointer: place.pointer,
    span: place.span,
    reason: rule.reason,
    source: rule.source,
    related: (more.related ?? []).map(({ span, message }): Related => ({
      span,
      message: shortened(toldInWords(message)),
      told: message,
    })),
    corrections: (more.corrections ?? []).map((one) => ({ ...one, why: toldInWords(one.why), told: one.why })),
  }
}
