import type { Fix, Found, Place, Speaker } from '../findings/found.ts'
import type { Param, Said } from '../findings/message.ts'
import type { Field } from '../records/field.ts'
import type { ReadFile } from '../records/read-file.ts'
import { ofFamily } from '../rules/words.ts'
import type { Evidence } from '../slips/evidence.ts'
import type { SlipVerdict } from '../slips/verdict.ts'
import { setScalar } from '../text/edits.ts'
import { applyEdits } from '../text/span.ts'
import { placeOf } from './apply-rules.ts'
import type { Reread } from './rereads.ts'
import { sentence } from './sentences.ts'
import type { Severities } from './severities.ts'
import { isSerious, weight } from './shared-fields.ts'
import { laterFields, slipFacts, slipFields } from './slip-facts.ts'

/** What folding wants to know beside the findings. */
export interface SlipContext {
  /** What the rules say of the record after a change. */
  readonly rules: (file: ReadFile<'panel'>) => readonly Found[]
  readonly severities: Severities
  /** What the rules found, with their own severities. */
  readonly unaccepted: readonly Found[]
  readonly reread: Reread
  readonly nameOf: (other: Evidence) => string
}

type Slip = SlipVerdict & { readonly kind: 'slip' }

/** One finding for a slip and all that its fix ends; null where it cannot be shown, or where the library has it off. */
export function explained(
  file: ReadFile<'panel'>,
  found: readonly Found[],
  verdict: Slip,
  context: SlipContext,
): readonly Found[] | null {
  const field = file.fields.get(verdict.pointer)
  if (!field) return null
  const fixes = [verdict, ...verdict.alternatives].map((one) => toFix(file, one))
  const fixed = context.reread(applyEdits(file.tree.text, fixes[0]!.edits)) as ReadFile<'panel'>
  const left = context.rules(fixed)
  const isIn = (list: readonly Found[], f: Found) =>
    list.some((l) => l.rule.id === f.rule.id && l.pointer === f.pointer)
  const gone = found.filter((f) => !isIn(left, f))
  // a rule that the library makes less than a warning gives way to others, but where it is alone it decides
  const serious = context.unaccepted.filter((f) => isSerious(f) && !isIn(left, f))
  const lead =
    strongest(gone.filter(isSerious), verdict.pointer) ??
    strongest(
      gone.filter((f) => isIn(serious, f)),
      verdict.pointer,
    )
  if (!lead && serious.length > 0) return null
  const one = lead ? { rule: lead.rule, severity: lead.severity } : slipIsAll(verdict, field, context)
  if (!one) return null
  // an error of the corrected field that the fix turns into information is what the slip explains
  const isError = found.some(
    (f) => f.severity === 'error' && f.pointer === verdict.pointer && isIn(left, f) && !isIn(left.filter(isSerious), f),
  )
  const claim = lead?.claim ?? slipClaim(field)
  const places = [...(lead ? [lead] : []), ...gone.filter((f) => f !== lead)].flatMap((f) => placesOf(file, f))
  const corrected = [verdict.pointer, ...(verdict.also ?? []).map((other) => other.pointer)]
  return [
    ...found
      .filter((f) => !gone.includes(f))
      .map((f) => asItWillBe(f, left, corrected, context))
      // of the same field, what is no more than unusual about its next value can wait until it is there
      .filter((f) => f.pointer !== field.pointer || isSerious(f) || !isIn(left, f)),
    {
      ...one,
      ...(isError && { severity: 'error' as const }),
      claim,
      sentence: slipSentence(claim, field, verdict, context),
      pointer: field.pointer,
      span: field.span,
      places: distinct(places.filter(({ path, pointer }) => path !== undefined || pointer !== field.pointer)),
      fixes,
    },
  ]
}

/** What the fix leaves, with the numbers that it leaves it with: nothing is derived from one that is probably wrong. */
function asItWillBe(
  f: Found,
  left: readonly Found[],
  corrected: readonly string[],
  { severities }: SlipContext,
): Found {
  const after = left.find((l) => l.rule.id === f.rule.id && l.pointer === f.pointer)
  const speaks = [f, ...f.places].some(({ pointer }) => corrected.includes(pointer))
  if (!after || !speaks) return f
  const fixes = f.fixes.filter(({ text }) => after.fixes.some((fix) => fix.text === text))
  const severity = severities([after])[0]?.severity ?? f.severity
  return { ...f, severity, claim: after.claim, sentence: after.sentence, fixes }
}

const slipClaim = (field: Field<unknown>): Said => ({
  say: 'slip',
  with: { field: { say: field.pointer, of: slipFields }, value: field },
  of: slipFacts.slip,
})

/** The rule that speaks where no other does, with the severity that the library gives it; null where it is off. */
function slipIsAll(
  { isSeenInTrueRecords }: Slip,
  field: Field<unknown>,
  { severities }: SlipContext,
): Pick<Found, 'rule' | 'severity'> | null {
  const rule: Speaker = slipFacts.slip
  const severity = isSeenInTrueRecords ? 'information' : rule.severity
  const { pointer, span } = field
  const [kept] = severities([{ rule, severity, claim: slipClaim(field), pointer, span, places: [], fixes: [] }])
  return kept ? { rule, severity: kept.severity } : null
}

function slipSentence(
  claim: Said,
  field: Field<unknown>,
  { from, siblings, text, why, rival }: Slip,
  { nameOf }: SlipContext,
) {
  const value = { field: { say: field.pointer, of: slipFields }, value: field }
  const borrowed: Param = from ? sentence({ say: 'borrowed', with: { value: field, other: nameOf(from) } }) : null
  const family = siblings.length > 0 ? ofFamily(siblings.map(nameOf)) : null
  const like: Param = family ? sentence({ say: 'like', with: { family } }) : null
  if (!rival) return sentence({ say: 'slip', with: { ...value, claim, borrowed, text, why, like } })
  const of = { say: rival.pointer, of: laterFields }
  const other: Param =
    rival.pointer === field.pointer ? rival.text : sentence({ say: 'ofField', with: { text: rival.text, field: of } })
  if (JSON.stringify(rival.why) === JSON.stringify(why))
    return sentence({ say: 'eitherAlike', with: { ...value, claim, borrowed, text, why, other, like } })
  return sentence({ say: 'either', with: { ...value, claim, borrowed, text, why, other, otherWhy: rival.why, like } })
}

function toFix(file: ReadFile<'panel'>, one: Pick<Slip, 'pointer' | 'text' | 'why' | 'also'>): Fix {
  const also = one.also ?? []
  return {
    pointer: one.pointer,
    text: one.text,
    why: one.why,
    certainty: 'guess',
    edits: [one, ...also].map(({ pointer, text }) => setScalar(file.tree, pointer, text)),
    ...(also.length > 0 && { also }),
  }
}

/** Where a finding is shown, then the other fields that it speaks of. */
function placesOf(file: ReadFile<'panel'>, { pointer, span, places }: Found): readonly Place[] {
  const field = file.fields.get(pointer)
  return [field ? placeOf(field) : { pointer, text: pointer, span }, ...places]
}

const strongest = (found: readonly Found[], pointer: string): Found | undefined =>
  [...found].sort((a, b) => weight(b) - weight(a) || Number(b.pointer === pointer) - Number(a.pointer === pointer))[0]

function distinct(places: readonly Place[]): readonly Place[] {
  const isSame = (a: Place, b: Place) => a.pointer === b.pointer && a.path === b.path
  return places.filter((place, i) => places.findIndex((p) => isSame(p, place)) === i)
}
