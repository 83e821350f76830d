import type { Fix } from '../findings/found.ts'
import { sayFrom, type Phrases, type Said } from '../findings/message.ts'
import type { Told } from '../wording/told.ts'
import type { RecordKind } from '../records/field-info.ts'

/** How what a rule claims becomes a whole sentence. */
export const sentences = {
  id: 'sentences',
  messages: {
    plain: '{claim}.',
    agrees: '{claim}; {text} ({why}) would agree.',
    use: '{claim}; use {text} ({why}).',
    slip: '{claim}{borrowed}; {text} ({why}) agrees with the other values{like}.',
    either: '{claim}{borrowed}; {text} ({why}) or {other} ({otherWhy}) agrees with the other values{like}.',
    ofField: '{text} for {field}',
    disagree: '{claim}{witnesses}.',
    borrowed: ', and {field} {value} is what {other} has',
    printed: '{claim} (the sheet prints it so).',
    copied: '; it is what {other} has',
    like: ' and with {family}',
    whole: '{text}',
  },
} as const satisfies Phrases

export const sentence = sayFrom(sentences)

export const plain = (claim: Said): Said => sentence({ say: 'plain', with: { claim } })

/** What is whole already: its own full stop or question mark is in it. */
export const whole = (text: Said | Told): Said => sentence({ say: 'whole', with: { text } })

/** In a record another number would agree with the rest; in a system somebody has to choose one. */
export const remedy = (kind: RecordKind, claim: Said, { text, why }: Fix): Said =>
  sentence({ say: kind === 'system' ? 'use' : 'agrees', with: { claim, text, why } })
