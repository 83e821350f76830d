import type { Finding, Severity } from '../findings/finding.ts'
import type { Settings } from '../records/records.generated.ts'
import { currentRuleId } from './former-rule-ids.ts'

/** Applies the library's own severity per rule; `off` silences a rule. */
export function withSeverities(found: readonly Finding[], settings: Settings | undefined): readonly Finding[] {
  const wanted = bySetting(settings?.severities ?? {})
  if (wanted.size === 0) return found
  return found.flatMap((one) => {
    const severity = wanted.get(one.rule)
    if (severity === 'off') return []
    return [severity ? { ...one, severity } : one]
  })
}

/** By the ids of today; where a rule has a severity under an old id too, that of the new one counts. */
function bySetting(severities: Settings['severities']): ReadonlyMap<string, Severity | 'off'> {
  const wanted = new Map(Object.entries(severities).map(([id, { value }]) => [currentRuleId(id), value]))
  for (const [id, { value }] of Object.entries(severities)) if (currentRuleId(id) === id) wanted.set(id, value)
  return wanted
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
