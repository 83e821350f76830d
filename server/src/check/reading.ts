import type { Finding } from '../findings/finding.ts'
import type { Found } from '../findings/found.ts'
import { phrase } from '../wording/phrase.ts'
import { whole } from './sentences.ts'

/** What reading a file found. */
export const readingFound = (findings: readonly Finding[]): readonly Found[] =>
  findings.map(
    ({
      rule,
      severity,
      message,
      sentence = phrase`${message}`,
      pointer,
      span,
      reason,
      source,
      related,
      corrections,
      trace,
    }) => ({
      rule: { id: rule, severity, reason, source, messages: {} },
      severity,
      claim: whole(sentence),
      sentence: whole(sentence),
      pointer,
      span,
      places: related.map((place) => ({ ...place, pointer: '', text: place.message })),
      fixes: corrections.map(({ sentence: why, ...one }) => ({ ...one, why: whole(why ?? phrase`${one.why}`) })),
      ...(trace !== undefined && { trace }),
    }),
  )
