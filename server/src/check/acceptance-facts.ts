import { foundAt, type Fix, type Found, type Place, type Speaker } from '../findings/found.ts'
import type { Edit } from '../text/span.ts'
import { phrase } from '../wording/phrase.ts'
import { whole } from './sentences.ts'

export const acceptanceFacts = {
  unreasoned: {
    id: 'acceptance-without-reason',
    severity: 'warning',
    reason: 'The next reader must know why a finding was let stand, or it will be looked at again.',
    source: 'common practice, no source',
    messages: { unreasoned: '{rule} is accepted without a reason; write `accept {rule}: why`' },
  },
  unknown: {
    id: 'unknown-rule',
    severity: 'warning',
    reason: 'A name that no rule has changes nothing, and what it was meant for goes on or stays silent unseen.',
    source: 'the rules of this program',
    messages: { unknown: 'No rule is called {rule}', near: 'No rule is called {rule}. Did you mean {near}?' },
  },
  unused: {
    id: 'acceptance-unused',
    severity: 'information',
    reason: 'An acceptance that no longer matches anything hides the next mistake on its line.',
    source: 'common practice, no source',
    messages: { unused: 'Nothing here is found by {rule}, so this acceptance can go' },
  },
  renamed: {
    id: 'rule-renamed',
    severity: 'hint',
    reason: 'The old id still works, but the reference and the messages use the new one.',
    source: 'the rules of this program',
    messages: { renamed: '{old} is now called {current}' },
  },
} as const satisfies Record<string, Speaker>

type Spot = Pick<Place, 'pointer' | 'span'>

/** `No rule is called efficiency-print. Did you mean efficiency-printed?` */
export function noSuchRule(rule: string, near: string | null, place: Spot, fixes: readonly Fix[] = []): Found {
  const { unknown } = acceptanceFacts
  if (near === null) return foundAt(unknown, place, { say: 'unknown', with: { rule } }, { fixes })
  const claim = foundAt(unknown, place, { say: 'near', with: { rule, near } }, { fixes })
  return { ...claim, sentence: whole(claim.claim) }
}

/** `voc-per-cell is now called voc-per-cell-unusual.` */
export function renamedRule(old: string, current: string, place: Spot, edit: Edit): Found {
  const fix = {
    pointer: place.pointer,
    text: current,
    why: whole(phrase`the new id`),
    certainty: 'same',
    edits: [edit],
  } as const
  return foundAt(acceptanceFacts.renamed, place, { say: 'renamed', with: { old, current } }, { fixes: [fix] })
}
