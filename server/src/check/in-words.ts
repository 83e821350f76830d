import type { Correction, Finding, Related } from '../findings/finding.ts'
import type { Fix, Found, Place } from '../findings/found.ts'
import { shortened } from '../findings/shortened.ts'
import { inWords, type Bundle } from '../findings/words.ts'
import type { RecordKind } from '../records/field-info.ts'
import { infoAt, nameOf } from '../records/info-at.ts'
import { internalError } from '../records/internal-error.ts'
import { recordOfPath } from '../records/kinds.ts'
import { schemas } from '../records/schemas.generated.ts'
import { phraseInWords } from '../wording/phrase.ts'
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
  const { rule, severity, claim, sentence = plain(claim), pointer, span, places, fixes, trace } = found
  return {
    rule: rule.id,
    severity,
    message: shortened(onceNamed(inWords(sentence, rule, bundle))),
    pointer,
    span,
    reason: rule.reason,
    source: rule.source,
    related: places.map((place) => related(place, kind, bundle)),
    corrections: fixes.map((fix) => correction(fix, found, bundle)),
    ...(trace !== undefined && { trace }),
  }
}

/** `Voc 2.21 V is probably 22.1 V: Voc 2.21 V is below …` names the field once. */
const onceNamed = (message: string): string =>
  message
    .replace(/^((?:The )?)(.+?)( (?:is probably|should be) .+?: )(?:The )?\2(?= )/, '$1$2$3it')
    .replace(
      /^(.+? (?:is probably|should be) .+?: )(The|All|Charging|Strings|Panels) /,
      (_, head: string, word: string) => `${head}${word.toLowerCase()} `,
    )

function related(place: Place, kind: RecordKind, bundle: Bundle | undefined): Related {
  const { span, path, sentence } = place
  const ofKind = path === undefined ? kind : (recordOfPath(path)?.kind ?? kind)
  const message = shortened(sentence ? phraseInWords(sentence, bundle) : called(ofKind, place))
  return { span, message, ...(path !== undefined && { path }) }
}

const correction = ({ why, ...rest }: Fix, { rule }: Found, bundle: Bundle | undefined): Correction => ({
  ...rest,
  why: shortened(inWords(why, rule, bundle)),
})

/** A field by its name and as it was typed: `Voc 39.1 V`. */
export function called(kind: RecordKind, { pointer, text }: Place): string {
  const root = schemas[kind]
  const info = root && infoAt(root, pointer)
  return info ? `${nameOf(info)} ${text}` : text
}
