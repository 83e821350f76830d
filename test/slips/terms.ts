import { inWords } from '../../server/src/findings/words.ts'
import { identities, identityLog } from '../../server/src/slips/density/arithmetic.ts'
import { coherenceWith } from '../../server/src/slips/density/coherence-with.ts'
import type { Frame } from '../../server/src/slips/density/coherence.ts'
import { shapeLog } from '../../server/src/slips/density/shape.ts'
import { nameOf, type Evidence } from '../../server/src/slips/evidence.ts'
import { familyLog, type Family } from '../../server/src/slips/family/family.ts'
import { search } from '../../server/src/slips/find-slip.ts'
import { calibration } from '../../server/src/slips/model/calibration.generated.ts'
import type { Candidate } from '../../server/src/slips/typos/candidate.ts'
import { reasons } from '../../server/src/slips/typos/reasons.ts'

/** How the slip search came to its scores, by the terms of server/src/slips/README.md, in natural logarithms. */
export interface Terms {
  /** Fields that another value could make likelier, and by how much at most. */
  readonly gains: readonly (readonly [name: string, gain: number])[]
  readonly typed: Parts
  /** What was tried, the likeliest first. */
  readonly tried: readonly (Parts & { readonly prior: number; readonly score: number; readonly what: string })[]
}

interface Parts {
  readonly core: number
  readonly arithmetic: number
  readonly shape: number
  readonly family: number
  readonly whole: number
}

export function termsOf(evidence: Evidence, family: Family | null, count: number): Terms {
  const { frame, suspects, tried } = search(evidence, family, calibration)
  const first = [...tried].sort((a, b) => b.score - a.score).slice(0, count)
  return {
    gains: suspects.map(({ field, gain }) => [nameOf(field), gain]),
    typed: partsOf(frame, family, asTyped),
    tried: first.map(({ candidate, score }) => ({
      ...partsOf(frame, family, candidate),
      prior: candidate.prior,
      score,
      what: inOneLine(candidate),
    })),
  }
}

const asTyped: Candidate = { fields: [], values: [], texts: [], why: { say: '' }, prior: 0 }

const inOneLine = ({ fields, texts, why }: Candidate) =>
  `${fields.map(nameOf).join(', ')}: ${texts.join(', ') || 'unknown'} (${inWords(why, reasons)})`

function partsOf(frame: Frame, family: Family | null, change: Candidate): Parts {
  const values = frame.values.slice()
  const halves = frame.halves.slice()
  change.fields.forEach((field, i) => {
    values[field] = change.values[i]!
    halves[field] = change.halves?.[i] ?? halves[field]!
  })
  const arithmetic = identities.reduce((sum, _, i) => sum + identityLog(frame, i, values, halves), 0)
  const shape = shapeLog(frame, values)
  const ofFamily = family ? familyLog(family, values) : 0
  const whole = coherenceWith(frame, change, -Infinity)
  return { core: whole - arithmetic - shape - ofFamily, arithmetic, shape, family: ofFamily, whole }
}
