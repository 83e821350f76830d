import { calibration as calibrated } from './model/calibration.generated.ts'
import type { Calibration } from './model/calibration.ts'
import type { Candidate } from './typos/candidate.ts'
import { candidates } from './typos/candidates.ts'
import { coherenceWith } from './density/coherence-with.ts'
import { identityGains } from './density/arithmetic.ts'
import { frameOf, sources, typedCoherence, type Frame } from './density/coherence.ts'
import { pointers, type Evidence } from './evidence.ts'
import { familyGains, type Family } from './family/family.ts'
import { sides } from './fields.ts'
import { countsCells, groupOf } from './model/group.ts'
import { unknown } from './typos/unknown.ts'
import { finerGain } from './typos/finer.ts'
import { decide } from './decide.ts'
import { nameGain } from './typos/name.ts'
import { noctRowGain } from './typos/noct-row.ts'
import type { Tried } from './typos/tried.ts'
import type { SlipVerdict } from './verdict.ts'

/** The one typing mistake that would make a panel record hang together, if there is one. */
export function findSlip(
  evidence: Evidence,
  family: Family | null = null,
  calibration: Calibration = calibrated,
): SlipVerdict {
  const { tried } = search(evidence, family, calibration)
  return tried.length === 0 ? { kind: 'consistent' } : decide(evidence, tried, family)
}

/** What was compared with what, before a verdict: for `findSlip`, and for `npm run slip-terms`, which prints it. */
export function search(evidence: Evidence, family: Family | null, calibration: Calibration) {
  const group = groupOf(evidence)
  const frame = frameOf(evidence, calibration[group], countsCells(group), family)
  const suspects = suspectsOf(frame)
  const strange = isStrange(frame)
  const isTried = suspects.length > 0 || strange
  return { frame, suspects, tried: isTried ? tryAll(evidence, frame, suspects, strange) : [] }
}

/** A field is left out once the best so far is ahead of all that it could gain. */
function tryAll(evidence: Evidence, frame: Frame, suspects: readonly Suspect[], strange: boolean): readonly Tried[] {
  const base = typedCoherence(frame)
  const { ofOne, negligible } = limitsOf(frame)
  const all = candidates(evidence, frame)
  const tried: Tried[] = []
  let best = -Infinity
  const attempt = (candidate: Candidate) => {
    if (candidate.fields.some((field) => evidence.readings[pointers[field]!]?.isPrinted)) return
    const apart = candidate.prior - base + noctRowGain(evidence, candidate) + nameGain(evidence, candidate)
    const score = coherenceWith(frame, candidate, negligible - apart) + apart
    if (score < negligible) return
    tried.push({ candidate, score })
    best = Math.max(best, score)
  }
  if (suspects.some(({ gain }) => gain >= ofOne) || strange) all.several().forEach(attempt)
  all.ofPairs(strange ? everywhere : suspects.map(({ field }) => field)).forEach(attempt)
  for (const { field, gain } of suspects) {
    if (gain < ofOne || gain + slack < best) break
    all.of(field).forEach(attempt)
    unknown(evidence, frame, [field]).forEach(attempt)
  }
  return tried
}

const everywhere = pointers.map((_, field) => field)

/** Several fields may be wrong together, so that no single one would gain much by another value. */
const isStrange = ({ core, typed }: Frame): boolean => core.size > 0 && typed.most - typed.core > mostOfTrue

/** A field, and how much likelier the record could become by another value in it, as logarithm. */
interface Suspect {
  readonly field: number
  readonly gain: number
}

/** Fields that another value, there or in two of them, could make enough likelier, by their gain. */
function suspectsOf(frame: Frame): readonly Suspect[] {
  const { gains, shapeGains, identities } = frame.typed
  const sum = identityGains(frame, identities)
  sources.forEach((fields, c) => fields.forEach((field) => (sum[field]! += gains[c]!)))
  const family = frame.family && familyGains(frame.family, frame.values)
  return pointers
    .map((_, field) => ({
      field,
      gain: frame.unfinished[field]
        ? Infinity
        : sum[field]! + shapeGains[field]! + (family?.[field] ?? 0) + finerGain(frame, field),
    }))
    .filter(({ field, gain }) => mayBeWrong(frame, field) && gain > limitsOf(frame).ofPair)
    .sort((a, b) => b.gain - a.gain || a.field - b.field)
}

/** It is typed; and where no other rating is, how long most panels are says little against a side. */
const mayBeWrong = ({ present, core }: Frame, field: number): boolean =>
  present[field]! && (core.size > 0 || !sides.includes(field))

/** What is not worth a try; flexible panels are called wrong on weaker evidence, see `decide.ts`. */
interface Limits {
  /** Gain below which no other value of one field explains enough, and of one field of two that stand in each other's place. */
  readonly ofOne: number
  readonly ofPair: number
  /** Score below which it takes more candidates than there are to move a verdict. */
  readonly negligible: number
}

/** Estimated: as high as they can be before unseen halves of the open ratings lose slips, since a suspect costs time. */
const limitsOfGlass: Limits = { ofOne: 5.5, ofPair: 3, negligible: -2 }
const limitsOfOthers: Limits = { ofOne: 4, ofPair: 2.5, negligible: -4 }
const limitsOf = ({ isGlass }: Frame) => (isGlass ? limitsOfGlass : limitsOfOthers)

/** How much less likely than the likeliest a record is that may have several slips; of the open ratings 5 in 100 are. */
const mostOfTrue = 15
/** Share of an unlikely field that is still worth a look, less the unlikeliness of any slip, as logarithm. */
const slack = 4
