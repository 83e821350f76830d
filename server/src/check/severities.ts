import type { Finding } from '../findings/finding.ts'
import type { Settings } from '../records/records.generated.ts'

/** Applies the library's own severity per rule; `off` silences a rule. */
export function withSeverities(found: readonly Finding[], settings: Settings | undefined): readonly Finding[] {
  const wanted = settings?.severities ?? {}
  if (Object.keys(wanted).length === 0) return found
  return found.flatMap((one) => {
    const severity = wanted[one.rule]?.value
    if (severity === 'off') return []
    return [severity ? { ...one, severity } : one]
  })
}

const rank = { error: 0, warning: 1, information: 2, hint: 3 }

/** In file order; at one place the most severe first, then by rule and message, so that no run differs from another. */
export const inOrder = (found: readonly Finding[]): readonly Finding[] =>
  [...found].sort(
    (a, b) =>
      a.span.start - b.span.start ||
      rank[a.severity] - rank[b.severity] ||
      compare(a.rule, b.rule) ||
      compare(a.message, b.message),
  )

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
