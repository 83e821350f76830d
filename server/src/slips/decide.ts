import { index, pointers, type Evidence } from './evidence.ts'
import { lender, siblingsLike, siblingsOtherThan, type Family } from './family/family.ts'
import { isOfGlass } from './model/group.ts'
import type { Candidate } from './typos/candidate.ts'
import type { Tried } from './typos/tried.ts'
import type { SlipFix, SlipVerdict } from './verdict.ts'

/** Logarithm of the odds, before looking, that a record has no slip; set where true records stay quiet. */
const quietOfGlass = 2.15
/** Of flexible panels less is known, and the density is wide: few true ones come near it; estimated. */
const quietOfOthers = -2
/** Share of the belief from which a fix is offered, and from which two are that are about as likely; estimated. */
const sureOfOne = 0.55
const sureOfTwo = 0.8
/** The share of a fix beside which no other field is named; estimated. */
const sureOfField = 0.7
/** The second against the first; of flexible panels the record says less of which of two it is. Estimated. */
const ofSecond = { glass: 0.25, others: 0.1 } as const
/** Flexible panels have almost any count of cells, so that one is sure only where the next is far; estimated. */
const sureOfCount = 0.7
/** Another efficiency, and ratings that agree with it, explain the same of a flexible panel; estimated. */
const sureOfEfficiency = 0.85
/** Share of a field in which another model's value stands from which no other field is sure, and what then is; estimated. */
const lentIsLikely = 0.1
const sureBesideLent = 0.8
/** Two values that are so near each other are as good as one; estimated. */
const asGood = 0.003

/** Weighs what was tried: no slip, one that can be named, or a field that is wrong in an unknown way. */
export function decide(evidence: Evidence, tried: readonly Tried[], family: Family | null): SlipVerdict {
  const isGlass = isOfGlass(evidence)
  const quiet = isGlass ? quietOfGlass : quietOfOthers
  // joining keeps the sum, and true records end here
  if (tried.reduce((sum, { score }) => sum + Math.exp(Math.min(score, 100)), 0) <= Math.exp(quiet))
    return { kind: 'consistent' }
  const sorted = joined(tried).sort((a, b) => b.score - a.score)
  const top = sorted[0]
  if (!top) return { kind: 'consistent' }
  const total = sorted.reduce((sum, { score }) => sum + Math.exp(score - top.score), 0)
  const odds = top.score + Math.log(total) - quiet
  if (odds <= 0) return { kind: 'consistent' }
  const share = (score: number) => Math.exp(score - top.score) / total
  const byField = new Map<number, number>()
  for (const { candidate, score } of sorted)
    byField.set(candidate.fields[0]!, (byField.get(candidate.fields[0]!) ?? 0) + share(score))
  const fields = [...byField]
    .sort((a, b) => b[1] - a[1])
    .filter(([, s], i) => i === 0 || s > 0.02)
    .map(([field]) => field)
  const exact = sorted.filter(({ candidate }) => candidate.texts.length > 0)
  const best = exact.find(({ candidate }) => candidate.fields[0] === fields[0])
  const text = (field: number) => evidence.readings[pointers[field]!]?.text ?? ''
  const from = family ? lender(family, evidence, fields[0]!) : undefined
  const borrowed = from && { from }
  // the same but for its last digits, and the same without a text
  const isNear = ({ candidate: { fields, values, texts } }: Tried, most: number) =>
    best !== undefined &&
    fields.length === best.candidate.fields.length &&
    fields.every((field, i) => field === best.candidate.fields[i]) &&
    (texts.length > 0 || best.candidate.isComputed) &&
    values.every((value, i) => Math.abs(value / best.candidate.values[i]! - 1) < (texts.length > 0 ? most : 0.01))
  const alike = sorted.filter((one) => one === best || isNear(one, asGood))
  const certainty = alike.reduce((sum, { score }) => sum + share(score), 0)
  const second = exact.find((one) => one !== best && !isNear(one, 0.01))
  const isBesideLent =
    family !== null &&
    fields.slice(1).some((field) => byField.get(field)! >= lentIsLikely && lender(family, evidence, field))
  const sure = isBesideLent ? sureBesideLent : isGlass || !best ? sureOfOne : sureOfFlexible(best.candidate)
  // another field takes more words, so that it is named only where the first is not that sure
  const isAsked = certainty < Math.max(sure, sureOfField) || second?.candidate.fields[0] === fields[0]
  const isClose =
    second !== undefined &&
    share(second.score) >= (isGlass ? ofSecond.glass : ofSecond.others) * Math.max(certainty, sure)
  const rival = isAsked && isClose && certainty + share(second.score) >= sureOfTwo ? second : undefined
  if (!best || (certainty < sure && !rival))
    return {
      kind: 'disagree',
      pointers: fields.map((p) => pointers[p]!),
      siblings: family ? siblingsOtherThan(family, evidence, fields[0]!) : [],
      ...borrowed,
      odds,
    }
  const fixes = exact.filter((t) => t === best || share(t.score) > 0.02).map((t) => fixing(t, share(t.score)))
  const first = fixing(best, share(best.score))
  return {
    kind: 'slip',
    ...first,
    siblings: family ? siblingsLike(family, best.candidate.fields[0]!, best.candidate.values[0]!) : [],
    ...borrowed,
    // twelve of the open ratings do, see test/published/data/README.md
    isSeenInTrueRecords: best.candidate.fields[0] === index.cells && text(index.cells) === '72' && first.text === '60',
    ...(rival && { rival: fixing(rival, share(rival.score)) }),
    alternatives: fixes.filter((m) => m.text !== first.text || m.pointer !== first.pointer).slice(0, 3),
    odds,
  }
}

/** From which share a fix of a flexible panel is offered. */
function sureOfFlexible({ fields, isComputed }: Candidate): number {
  if (isComputed && (fields[0] === index.efficiency || fields.length > 1)) return sureOfEfficiency
  return fields[0] === index.cells ? sureOfCount : sureOfOne
}

function fixing({ candidate: { fields, texts, why, also: further = [] } }: Tried, certainty: number): SlipFix {
  const also = [...texts.slice(1).map((text, i) => ({ pointer: pointers[fields[i + 1]!]!, text })), ...further]
  return { pointer: pointers[fields[0]!]!, text: texts[0]!, ...(also.length > 0 && { also }), why, certainty }
}

/** The same correction by several ways counts once, with their sum. */
function joined(tried: readonly Tried[]): Tried[] {
  const byText = new Map<string, Tried>()
  for (const one of tried) {
    const { fields, texts } = one.candidate
    const key = texts.length > 0 ? `${fields.join()} ${texts.join()}` : `${fields.join()}`
    const other = byText.get(key)
    if (!other) byText.set(key, one)
    else {
      const [more, less] = one.score > other.score ? [one, other] : [other, one]
      byText.set(key, { ...more, score: more.score + Math.log1p(Math.exp(less.score - more.score)) })
    }
  }
  return [...byText.values()]
}
