import type { Finding } from '../findings/finding.ts'
import type { Found } from '../findings/found.ts'
import { tell } from '../wording/told.ts'
import { whole } from './sentences.ts'

/** What reading a file found. */
export const readingFound = (findings: readonly Finding[]): readonly Found[] =>
  findings.map(
    ({ rule, severity, message, told = tell`${message}`, pointer, span, reason, source, related, corrections }) => ({
      rule: { id: rule, severity, reason, source, messages: {} },
      severity,
      claim: whole(told),
      sentence: whole(told),
      pointer,
      span,
      places: related.map((place) => ({ ...place, pointer: '', text: place.message })),
      fixes: corrections.map(({ told: why, ...one }) => ({ ...one, why: whole(why ?? tell`${one.why}`) })),
    }),
  )
