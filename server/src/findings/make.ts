import type { Span } from '../text/span.ts'
import type { Correction, Finding, Related, RuleFacts, Severity } from './finding.ts'

/** A finding of a rule, at a place. */
export function finding(
  rule: RuleFacts,
  place: { readonly pointer: string; readonly span: Span },
  message: string,
  more: {
    readonly severity?: Severity | undefined
    readonly related?: readonly Related[]
    readonly corrections?: readonly Correction[]
  } = {},
): Finding {
  return {
    rule: rule.id,
    severity: more.severity ?? rule.severity,
    message,
    pointer: place.pointer,
    span: place.span,
    reason: rule.reason,
    source: rule.source,
    related: more.related ?? [],
    corrections: more.corrections ?? [],
  }
}
