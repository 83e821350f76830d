import { foundAt, type Found } from '../findings/found.ts'
import type { Param } from '../findings/message.ts'
import type { Field } from '../records/field.ts'
import type { ReadFile } from '../records/read-file.ts'
import { ofFamily } from '../rules/words.ts'
import type { Evidence } from '../slips/evidence.ts'
import type { SlipVerdict } from '../slips/verdict.ts'
import { explained, type SlipContext } from './explained.ts'
import { placeOf } from './apply-rules.ts'
import { isSerious, withoutShared } from './shared-fields.ts'
import { plain, sentence } from './sentences.ts'
import { slipFacts, slipFields } from './slip-facts.ts'

/**
 * One mistake yields one finding, on the field most likely wrong: what the likeliest slip explains away is folded into it,
 * and without a slip what shares a field is.
 */
export function fold(
  file: ReadFile<'panel'>,
  found: readonly Found[],
  verdict: SlipVerdict,
  context: SlipContext,
): readonly Found[] {
  if (verdict.kind === 'slip') return explained(file, found, verdict, context) ?? withoutShared(found)
  const folded = withoutShared(verdict.kind === 'disagree' ? found.map((one) => unsure(one, verdict.pointers)) : found)
  const first = verdict.kind === 'disagree' ? file.fields.get(verdict.pointers[0]!) : undefined
  if (verdict.kind !== 'disagree' || !first) return folded
  if (context.unaccepted.some(isSerious)) return folded.map((one) => (isSerious(one) ? shownAt(file, one, first) : one))
  return [...folded, ...context.severities([disagreement(file, verdict, first, context)])]
}

/** Without fixes that guess at a number where no fix of these fields is sure. */
function unsure(one: Found, pointers: readonly string[]): Found {
  const concerned = [one.pointer, ...one.places.map(({ pointer }) => pointer)].some(
    (pointer) => pointers[0] === pointer,
  )
  const fixes = concerned ? one.fixes.filter(({ certainty }) => certainty !== 'guess') : one.fixes
  if (fixes.length === one.fixes.length) return one
  return { ...one, fixes, ...(fixes.length === 0 && { sentence: plain(one.claim) }) }
}

function disagreement(
  file: ReadFile<'panel'>,
  verdict: SlipVerdict & { kind: 'disagree' },
  first: Field<unknown>,
  { nameOf }: SlipContext,
): Found {
  const places = verdict.pointers.slice(1).flatMap((p) => file.fields.get(p) ?? [])
  const field = { say: first.pointer, of: slipFields }
  const found = foundAt(
    slipFacts.disagree,
    first,
    { say: 'disagree', with: { field, value: first } },
    { places: places.map(placeOf) },
  )
  const against = witnesses(verdict, nameOf)
  return { ...found, sentence: sentence({ say: 'disagree', with: { claim: found.claim, witnesses: against } }) }
}

/** What the family says against a value that nothing fixes. */
function witnesses(
  { from, siblings }: Pick<SlipVerdict & { kind: 'disagree' }, 'from' | 'siblings'>,
  nameOf: (other: Evidence) => string,
): Param {
  if (from) return sentence({ say: 'copied', with: { other: nameOf(from) } })
  return siblings.length > 0 ? sentence({ say: 'against', with: { family: ofFamily(siblings.map(nameOf)) } }) : null
}

/** Moves a finding to the most suspect field, where that is one of those that disagree. */
function shownAt(file: ReadFile<'panel'>, one: Found, { pointer, span }: Field<unknown>): Found {
  const here = one.places.find((place) => place.path === undefined && place.pointer === pointer)
  const before = file.fields.get(one.pointer)
  if (!here || !before || one.fixes.length > 0) return one
  return { ...one, pointer, span, places: [placeOf(before), ...one.places.filter((place) => place !== here)] }
}
