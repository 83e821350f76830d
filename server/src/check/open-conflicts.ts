import type { Found } from '../findings/found.ts'
import { reading } from '../records/facts.ts'
import type { Edit, Span } from '../text/span.ts'
import type { Tree } from '../text/tree.ts'

/** Whether a file holds lines in two versions of which nobody has chosen one: what is in them is not checked. */
export const hasOpenConflict = ({ problems }: Tree): boolean => problems.some(({ spoils }) => spoils !== undefined)

/**
 * Whether a finding or an edit of it is in one of two versions, of which the other may be kept; not so for what settles them.
 */
export function isInOneVersion({ problems }: Tree, { rule, span }: Found, edits: readonly Edit[]): boolean {
  const own = rule.id === reading.syntax.id ? span.start : null
  return problems.some(
    ({ spoils, span: { start } }) =>
      spoils && start !== own && [span, ...edits.map((edit) => edit.span)].some((place) => isWithin(place, spoils)),
  )
}

/** What is inserted right behind a conflict may belong to a group in it. */
const isWithin = ({ start, end }: Span, conflict: Span) =>
  start === end ? conflict.start < start && start <= conflict.end : start < conflict.end && conflict.start < end
