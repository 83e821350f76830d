import type { Correction, Finding, Related, RuleFacts } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import type { Field } from '../records/field.ts'
import type { ReadFile } from '../records/read-file.ts'
import { readFile } from '../records/read.ts'
import { ofFamily } from '../rules/words.ts'
import type { Evidence } from '../slips/evidence.ts'
import type { SlipVerdict } from '../slips/verdict.ts'
import { setScalar } from '../text/edits.ts'
import { applyEdits } from '../text/span.ts'
import { called } from './doubts.ts'

export const slipFacts = {
  slip: {
    id: 'likely-slip',
    severity: 'warning',
    reason: 'A datasheet says the same thing several times over; one mistyped value makes it contradict itself.',
    source: 'likelihood under relations calibrated on open module ratings of a public list, 2015 to 2022',
  },
  disagree: {
    id: 'ratings-disagree',
    severity: 'warning',
    reason: 'These values cannot all be right, and no single typing mistake stands out that would explain them.',
    source: 'likelihood under relations calibrated on open module ratings of a public list, 2015 to 2022',
  },
} as const satisfies Record<string, RuleFacts>

/** What rules say of a record after it was changed. */
export type Judge = (file: ReadFile<'panel'>) => readonly Finding[]

interface About {
  readonly judge: Judge
  /** The name of another record of the family. */
  readonly nameOf: (sibling: Evidence) => string
}

/**
 * One mistake yields one finding, on the field most likely wrong: findings that the likeliest slip explains away are
 * folded into it, with the others' fields as related places.
 */
export function oneMistake(
  file: ReadFile<'panel'>,
  found: readonly Finding[],
  verdict: SlipVerdict,
  about: About,
): readonly Finding[] {
  if (verdict.kind === 'slip') return explained(file, found, verdict, about)
  const folded = fold(found)
  const first = verdict.kind === 'disagree' ? file.fields.get(verdict.pointers[0]!) : undefined
  if (verdict.kind !== 'disagree' || !first) return folded
  if (folded.some(isSerious)) return folded.map((one) => (isSerious(one) ? toldAt(file, one, first) : one))
  const others = verdict.pointers.slice(1).flatMap((p) => file.fields.get(p) ?? [])
  const related = others.map((field) => ({ span: field.span, message: called(file.kind, field) }))
  return [
    ...folded,
    finding(slipFacts.disagree, first, capital(`${verdict.message}${witnesses(verdict, about)}`), { related }),
  ]
}

/** Moves a finding to the most suspect field, where that is one of those that disagree. */
function toldAt(file: ReadFile<'panel'>, one: Finding, { pointer, span }: Pick<Field, 'pointer' | 'span'>): Finding {
  const here = one.related.find((place) => place.span.start === span.start)
  if (!here || one.corrections.length > 0) return one
  const others = one.related.filter((place) => place !== here)
  return { ...one, pointer, span, related: [{ span: one.span, message: nameAt(file, one.pointer) }, ...others] }
}

function explained(
  file: ReadFile<'panel'>,
  found: readonly Finding[],
  verdict: SlipVerdict & { kind: 'slip' },
  about: About,
): readonly Finding[] {
  const field = file.fields.get(verdict.pointer)
  if (!field) return fold(found)
  const corrections = [verdict, ...verdict.alternatives].map((one): Correction => {
    const also = one.also ?? []
    return {
      pointer: one.pointer,
      text: one.text,
      why: one.why,
      certainty: 'guess',
      edits: [one, ...also].map(({ pointer, text }) => setScalar(file.tree, pointer, text)),
      ...(also.length > 0 && { also }),
    }
  })
  const fixed = readFile(file.path, applyEdits(file.tree.text, corrections[0]!.edits)) as ReadFile<'panel'>
  const left = about.judge(fixed)
  const gone = found.filter((f) => !left.some((l) => l.rule === f.rule && l.pointer === f.pointer))
  const lead = strongest(gone.filter(isSerious), verdict.pointer)
  const cause = lead ? lead.message.replace(/\.$|; [^;]* would agree\.$/, '') : capital(verdict.message)
  const borrowed = verdict.from ? `, and ${called(file.kind, field)} is what ${about.nameOf(verdict.from)} has` : ''
  const like = verdict.siblings.length > 0 ? ` and with ${named(verdict.siblings, about)}` : ''
  const message = `${cause}${borrowed}; ${verdict.text} (${verdict.why}) agrees with the other values${like}.`
  const places = [...(lead ? [lead] : []), ...gone.filter((f) => f !== lead)].flatMap((f): readonly Related[] => [
    { span: f.span, message: nameAt(file, f.pointer) },
    ...f.related,
  ])
  const facts = lead
    ? { id: lead.rule, severity: lead.severity, reason: lead.reason, source: lead.source }
    : { ...slipFacts.slip, ...(verdict.isListed && { severity: 'information' as const }) }
  const one = finding(facts, field, message, {
    related: distinct(places.filter((place) => !isHere(place) || place.span.start !== field.span.start)),
    corrections,
  })
  return [...found.filter((f) => !gone.includes(f)), one]
}

/** What the family says against a value that nothing fixes. */
function witnesses(
  { from, siblings }: Pick<SlipVerdict & { kind: 'disagree' }, 'from' | 'siblings'>,
  about: About,
): string {
  if (from) return `; it is what ${about.nameOf(from)} has`
  return siblings.length > 0 ? ` and with ${named(siblings, about)}` : ''
}

const named = (siblings: readonly Evidence[], { nameOf }: About): string => ofFamily(siblings.map(nameOf))

/** The message says enough; the other places are only named, those of the leading finding first. */
function nameAt(file: ReadFile<'panel'>, pointer: string): string {
  const field = file.fields.get(pointer)
  return field ? called(file.kind, field) : pointer
}

/**
 * Serious findings that share a field tell of one mistake; the strongest speaks for them, on the field most of them name,
 * and for what is merely unusual about the same fields. Of what is unusual that with a fix speaks for the rest.
 */
function fold(found: readonly Finding[]): readonly Finding[] {
  const kept: Finding[] = []
  const mentions = new Map<number, number>()
  const all = found.filter(isSerious)
  for (const one of all) for (const place of placesOf(one)) mentions.set(place, (mentions.get(place) ?? 0) + 1)
  const blame = (one: Finding) => mentions.get(one.span.start) ?? 0
  const serious = [...all].sort((a, b) => weight(b) - weight(a) || blame(b) - blame(a))
  for (const one of serious) {
    const places = new Set(placesOf(one))
    const other = kept.find((k) => placesOf(k).some((place) => places.has(place)))
    if (!other) kept.push(one)
  }
  const speaks = [...kept, ...found.filter((f) => f.severity === 'information' && f.corrections.length > 0)]
  const isSaid = (f: Finding) =>
    f.severity === 'information' &&
    speaks.some((k) => k !== f && placesOf(f).every((place) => placesOf(k).includes(place)))
  return found.filter((f) => (isSerious(f) ? kept.includes(f) : !isSaid(f)))
}

const capital = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1)
const isHere = ({ path }: { readonly path?: string }) => path === undefined
const placesOf = ({ span, related }: Finding) => [span.start, ...related.filter(isHere).map((r) => r.span.start)]
const isSerious = ({ severity }: Finding) => severity === 'error' || severity === 'warning'
const weight = ({ severity, corrections }: Finding) => (severity === 'error' ? 2 : 0) + (corrections.length > 0 ? 1 : 0)

const strongest = (found: readonly Finding[], pointer: string): Finding | undefined =>
  [...found].sort((a, b) => weight(b) - weight(a) || Number(b.pointer === pointer) - Number(a.pointer === pointer))[0]

function distinct(places: readonly Related[]): readonly Related[] {
  const isSame = (a: Related, b: Related) => a.span.start === b.span.start && a.path === b.path
  return places.filter((place, i) => places.findIndex((p) => isSame(p, place)) === i)
}
