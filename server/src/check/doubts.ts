import type { Correction, Finding, RuleFacts } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import type { RecordKind } from '../records/field-info.ts'
import type { Field } from '../records/field.ts'
import { infoAt, nameOf } from '../records/info-at.ts'
import { recordOfPath } from '../records/kinds.ts'
import { schemas } from '../records/schemas.generated.ts'
import type { Doubt, Proposal, Rule } from '../rules/rule.ts'
import { setScalar } from '../text/edits.ts'
import type { Tree } from '../text/tree.ts'

/** Runs rules over one record; each doubt becomes a finding at its first suspect, the others are related places. */
export function judge<R, A>(
  rules: readonly Rule<R, A>[],
  { kind, record, tree }: { readonly kind: RecordKind; readonly record: R; readonly tree: Tree },
  about: A,
): readonly Finding[] {
  const found: Finding[] = []
  for (const rule of rules) {
    const doubts = rule.check(record, about)
    if (doubts) for (const doubt of isList(doubts) ? doubts : [doubts]) found.push(toFinding(rule, doubt, kind, tree))
  }
  return found
}

const isList = (doubts: Doubt | readonly Doubt[]): doubts is readonly Doubt[] => Array.isArray(doubts)

function toFinding(rule: RuleFacts, doubt: Doubt, kind: RecordKind, tree: Tree): Finding {
  const [first, ...others] = doubt.suspects
  return finding(rule, first, withMend(doubt, kind), {
    severity: doubt.severity,
    related: [
      ...others.map((field) => ({ span: field.span, message: called(kind, field) })),
      ...(doubt.elsewhere ?? []).map(({ path, field }) => ({
        span: field.span,
        message: called(recordOfPath(path)?.kind ?? kind, field),
        path,
      })),
    ],
    corrections: doubt.correction ? [toCorrection(doubt.correction, tree)] : [],
  })
}

/** A field by its name and as it was typed: `Voc 39.1 V`. */
export function called(kind: RecordKind, { pointer, text }: Field<unknown>): string {
  const root = schemas[kind]
  const info = root && infoAt(root, pointer)
  return info ? `${nameOf(info)} ${text}` : text
}

/** In a record another number would agree with the rest; in a system somebody has to choose one. */
function withMend({ message, correction }: Doubt, kind: RecordKind): string {
  if (!correction) return `${message}.`
  const { text, why } = correction
  return kind === 'system' ? `${message}; use ${text} (${why}).` : `${message}; ${text} (${why}) would agree.`
}

export function toCorrection({ field, text, why, certainty, also = [] }: Proposal, tree: Tree): Correction {
  return {
    pointer: field.pointer,
    text,
    why,
    certainty,
    edits: [{ field, text }, ...also].map((one) => setScalar(tree, one.field.pointer, one.text)),
    ...(also.length > 0 && { also: also.map((one) => ({ pointer: one.field.pointer, text: one.text })) }),
  }
}
