import { foundAt, type Found } from '../findings/found.ts'
import { nearest } from '../records/nearest.ts'
import { acceptanceFacts, noSuchRule, renamedRule } from './acceptance-facts.ts'
import type { Acceptance } from './acceptances.ts'

/** A finding that a person let stand, with the acceptance that does so. */
export interface Match {
  readonly found: Found
  readonly acceptance: Acceptance
}

/** Takes out what a person let stand. */
export function accept(
  found: readonly Found[],
  acceptances: readonly Acceptance[],
): { readonly open: readonly Found[]; readonly accepted: readonly Match[] } {
  if (acceptances.length === 0) return { open: found, accepted: [] }
  const matched = found.map((one) => ({ found: one, acceptance: acceptances.find((a) => covers(a, one)) }))
  return {
    open: matched.flatMap((one) => (one.acceptance ? [] : [one.found])),
    accepted: matched.flatMap(({ found, acceptance }) => (acceptance ? [{ found, acceptance }] : [])),
  }
}

/** What there is to match. */
interface Matchable {
  /** The ids of all rules. */
  readonly rules: readonly string[]
  /** Whether not all of the file was checked, so that one that matches nothing may be needed. */
  readonly mayBeUsed: boolean
}

/** Which acceptances lack a reason, name no rule, match nothing or use an old id. */
export function complaints(
  acceptances: readonly Acceptance[],
  accepted: readonly Match[],
  what: Matchable,
): readonly Found[] {
  const used = new Set(accepted.map(({ acceptance }) => acceptance))
  return acceptances.flatMap((one) => (used.has(one) ? newName(one) : complaint(one, what)))
}

const newName = ({ rule, typed, update, pointers }: Acceptance): readonly Found[] =>
  rule === typed ? [] : [renamedRule(typed, rule, { pointer: pointers?.[0] ?? '', span: update.span }, update)]

function complaint({ rule, because, span, pointers }: Acceptance, { rules, mayBeUsed }: Matchable): readonly Found[] {
  const place = { pointer: pointers?.[0] ?? '', span }
  if (!rules.includes(rule)) return [noSuchRule(rule, nearest(rule, rules), place)]
  if (because === '') return [foundAt(acceptanceFacts.unreasoned, place, { say: 'unreasoned', with: { rule } })]
  return mayBeUsed ? [] : [foundAt(acceptanceFacts.unused, place, { say: 'unused', with: { rule } })]
}

const covers = ({ rule, because, pointers }: Acceptance, { rule: { id }, pointer }: Found) =>
  because !== '' &&
  rule === id &&
  (pointers === null || pointers.some((p) => pointer === p || pointer.startsWith(`${p}/`)))
