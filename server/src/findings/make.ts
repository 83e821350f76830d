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
    message: shortened(message),
    pointer: place.pointer,
    span: place.span,
    reason: rule.reason,
    source: rule.source,
    related: (more.related ?? []).map((one) => ({ ...one, message: shortened(one.message) })),
    corrections: more.corrections ?? [],
  }
}

/** What a person reads at a glance: of a message that quotes more, the beginning and the advice at its end stay. */
const longest = 300

export function shortened(message: string): string {
  if (message.length <= longest) return message
  const beginning = message.slice(0, 200).replace(/[\ud800-\udbff]$/, '')
  return `${beginning} … ${message.slice(-90).replace(/^[\udc00-\udfff]/, '')}`
}
