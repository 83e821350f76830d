import type { Severity } from '../findings/finding.ts'
import type { Found } from '../findings/found.ts'
import type { Settings } from '../records/records.generated.ts'
import { currentRuleId } from './former-rule-ids.ts'

/** Gives what was found the severities that a library sets for its rules. What is off is not there. */
export type Severities = (found: readonly Found[]) => readonly Found[]

export function severitiesOf(settings: Settings | undefined): Severities {
  const wanted = bySetting(settings?.severities ?? {})
  if (wanted.size === 0) return (found) => found
  return (found) =>
    found.flatMap((one) => {
      const severity = wanted.get(one.rule.id)
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
