import type { Finding } from '../findings/finding.ts'
import { rank } from '../findings/severities.ts'

/** In file order; at one place the most severe first, then by rule and message, so that no run differs from another. */
export const inOrder = (found: readonly Finding[]): readonly Finding[] =>
  [...found].sort(
    (a, b) =>
      a.span.start - b.span.start ||
      rank(a.severity) - rank(b.severity) ||
      compare(a.rule, b.rule) ||
      compare(a.message, b.message),
  )

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
