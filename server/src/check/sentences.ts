import type { Fix } from '../findings/found.ts'
import { sayFrom, type Catalogue, type Said } from '../findings/message.ts'
import { named, phrase, type Phrase } from '../wording/phrase.ts'
import { fieldName, infoAt } from '../records/info-at.ts'
import { schemas } from '../records/schemas.generated.ts'
import { slipFields } from './slip-facts.ts'
import type { RecordKind } from '../records/field-info.ts'

/** How what a rule claims becomes a whole sentence. */
export const sentences = {
  id: 'sentences',
  messages: {
    plain: '{claim}.',
    agrees: '{field} {value} is probably {text} ({why}): {claim}.',
    should: '{field} {value} should be {text} ({why}): {claim}.',
    shouldBeSoMany: '{value} {field} should be {text} ({why}): {claim}.',
    use: '{claim}; use {text} ({why}).',
    slip: '{field} {value} is probably {text}{like} ({why}): {claim}{borrowed}.',
    either: '{field} {value} is probably {text} ({why}) or {other} ({otherWhy}){like}: {claim}{borrowed}.',
    eitherAlike: '{field} {value} is probably {text} or {other} ({why}){like}: {claim}{borrowed}.',
    ofField: '{text} for {field}',
    disagree: '{claim}{witnesses}.',
    borrowed: ', and {value} is what {other} has',
    printed: '{claim} (the sheet prints it so).',
    copied: '; it is what {other} has',
    against: ' and with {family}',
    like: ', as in {family}',
    whole: '{text}',
  },
} as const satisfies Catalogue

export const sentence = sayFrom(sentences)

export const plain = (claim: Said): Said => sentence({ say: 'plain', with: { claim } })

/** What is whole already: its own full stop or question mark is in it. */
export const whole = (text: Said | Phrase): Said => sentence({ say: 'whole', with: { text } })

/**
 * What would be right comes first: lists of problems are cut at the right. In a record another number is what was meant; in a
 * system one has to be chosen.
 */
export function remedy(kind: RecordKind, claim: Said, { pointer, text, why }: Fix, value: string): Said {
  const root = kind === 'system' ? schemas.system : undefined
  const info = root && infoAt(root, pointer)
  if (info?.type === 'integer')
    return sentence({ say: 'shouldBeSoMany', with: { field: named(info.title), value, claim, text, why } })
  const field = fieldAt(kind, pointer)
  if (field === null || (info && info.type !== 'quantity')) return sentence({ say: 'use', with: { claim, text, why } })
  return sentence({ say: info ? 'should' : 'agrees', with: { field, value, claim, text, why } })
}

/** What a sentence about a field begins with: `The Voc coefficient`, `The weight`. */
function fieldAt(kind: RecordKind, pointer: string): Said | Phrase | null {
  if (pointer in slipFields.messages) return { say: pointer, of: slipFields }
  const root = schemas[kind]
  const info = root && infoAt(root, pointer)
  // a number of years is called by what it is the warranty of
  if (!info || info.key === 'years') return null
  const name = fieldName(info)
  return info.symbol && /^[A-Z]\w*$/.test(info.symbol) ? name : phrase`The ${name}`
}
