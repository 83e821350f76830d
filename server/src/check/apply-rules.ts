import type { Fix, Found, Place } from '../findings/found.ts'
import type { Said } from '../findings/message.ts'
import type { Doubt, Proposal, Rule, Suspect } from '../findings/rule.ts'
import type { RecordKind } from '../records/field-info.ts'
import { setScalar } from '../text/edits.ts'
import type { Tree } from '../text/tree.ts'
import { remedy } from './sentences.ts'

/** Runs rules over one record; each doubt is shown at its first suspect, the others become its places. */
export function applyRules<R, A>(
  rules: readonly Rule<R, A>[],
  { kind, record, tree }: { readonly kind: RecordKind; readonly record: R; readonly tree: Tree },
  about: A,
): readonly Found[] {
  const found: Found[] = []
  for (const rule of rules) {
    const doubts = rule.check(record, about)
    if (doubts) for (const doubt of isList(doubts) ? doubts : [doubts]) found.push(toFound(rule, doubt, kind, tree))
  }
  return found
}

const isList = (doubts: Doubt | readonly Doubt[]): doubts is readonly Doubt[] => Array.isArray(doubts)

function toFound<R, A>(rule: Rule<R, A>, doubt: Doubt, kind: RecordKind, tree: Tree): Found {
  const [first, ...others] = doubt.suspects
  const said = ({ say, with: params, of = rule }: Said): Said => ({ say, of, ...(params && { with: params }) })
  const claim = said(doubt)
  const fix = doubt.correction && toFix({ ...doubt.correction, why: said(doubt.correction.why) }, tree)
  return {
    rule,
    severity: doubt.severity ?? rule.severity,
    claim,
    ...(fix && !doubt.saysFix && { sentence: remedy(kind, claim, fix, doubt.correction.field.text) }),
    pointer: first.pointer,
    span: first.span,
    places: [
      ...others.map((field) => placeOf(field)),
      ...(doubt.elsewhere ?? []).map(({ path, field }) => ({ ...placeOf(field), path })),
    ],
    fixes: fix ? [fix] : [],
  }
}

export const placeOf = ({ pointer, text, span }: Suspect): Place => ({ pointer, text, span })

function toFix({ field, text, why, certainty, also = [] }: Proposal, tree: Tree): Fix {
  return {
    pointer: field.pointer,
    text,
    why,
    certainty,
    edits: [{ field, text }, ...also].map((one) => setScalar(tree, one.field.pointer, one.text)),
    ...(also.length > 0 && { also: also.map((one) => ({ pointer: one.field.pointer, text: one.text })) }),
  }
}
