import type { Correction, Finding, Related } from '../findings/finding.ts'
import type { Fix, Found, Place } from '../findings/found.ts'
import { shortened } from '../findings/shortened.ts'
import { inWords, templateOf } from '../findings/words.ts'
import type { RecordKind } from '../records/field-info.ts'
import { fieldName, infoAt } from '../records/info-at.ts'
import { internalError } from '../records/internal-error.ts'
import { recordOfPath } from '../records/kinds.ts'
import { schemas } from '../records/schemas.generated.ts'
import type { Bundle } from '../wording/bundle.ts'
import { phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'
import { onceNamed } from './once-named.ts'
import { plain } from './sentences.ts'

/** The last step: what was found becomes sentences. What cannot be said is a mistake of our own at that place, and the rest is said. */
export function toFinding(found: Found, kind: RecordKind, bundle?: Bundle): Finding {
  try {
    return said(found, kind, bundle)
  } catch (error) {
    const { pointer, span } = found
    return { ...internalError(error), pointer, span }
  }
}

function said(found: Found, kind: RecordKind, bundle: Bundle | undefined): Finding {
  const { rule, severity, claim, sentence: whole = plain(claim), pointer, span, places, fixes, trace } = found
  return {
    rule: rule.id,
    severity,
    message: shortened(onceNamed(whole, rule, bundle)),
    pointer,
    span,
    reason: templateOf(rule.reason, `${rule.id}/reason`, bundle),
    source: rule.source,
    related: places.map((place) => related(place, kind, bundle)),
    corrections: fixes.map((fix) => correction(fix, found, bundle)),
    ...(trace !== undefined && { trace }),
  }
}

function related(place: Place, kind: RecordKind, bundle: Bundle | undefined): Related {
  const { span, path, sentence } = place
  const ofKind = path === undefined ? kind : (recordOfPath(path)?.kind ?? kind)
  const message = shortened(phraseInWords(sentence ?? called(ofKind, place), bundle))
  return { span, message, ...(path !== undefined && { path }) }
}

const correction = ({ why, ...rest }: Fix, { rule }: Found, bundle: Bundle | undefined): Correction => ({
  ...rest,
  why: shortened(inWords(why, rule, bundle)),
})

/** A field by its name and as it was typed: `Voc 39.1 V`. */
export function called(kind: RecordKind, { pointer, text }: Place): Phrase {
  const root = schemas[kind]
  const info = root && infoAt(root, pointer)
  return info ? phrase`${fieldName(info)} ${text}` : phrase`${text}`
}
