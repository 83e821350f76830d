import type { Found } from '../findings/found.ts'
import type { ReadFile } from '../records/read-file.ts'
import { asItIs } from './sentences.ts'

/** What reading a file found, which is in words already. */
export const readingFound = ({ readFindings }: ReadFile): readonly Found[] =>
  readFindings.map(({ rule, severity, message, pointer, span, reason, source, related, corrections }) => ({
    rule: { id: rule, severity, reason, source, messages: {} },
    severity,
    claim: asItIs(message),
    sentence: asItIs(message),
    pointer,
    span,
    places: related.map((place) => ({ ...place, pointer: '', text: place.message })),
    fixes: corrections.map((one) => ({ ...one, why: asItIs(one.why) })),
  }))
