import { calibration as calibrated } from './calibration.generated.ts'
import type { Calibration } from './calibration.ts'
import { candidates, coherenceWith } from './candidates.ts'
import { coherence, frameOf, identities, identityGains, shapeGain, sources, strains, type Frame } from './coherence.ts'
import { pointers, type Evidence } from './evidence.ts'
import { countsCells, groupOf } from './group.ts'
import { unknown } from './unknown.ts'
import { judge } from './judge.ts'
import { noctRowGain } from './noct-row.ts'
import type { SlipVerdict } from './verdict.ts'

/** The one typing mistake that would make a panel record hang together, if there is one. */
export function findSlip(evidence: Evidence, calibration: Calibration = calibrated): SlipVerdict {
  const group = groupOf(evidence)
  const frame = frameOf(evidence, calibration[group], countsCells(group))
  const suspects = suspectsOf(frame)
  if (suspects.length === 0) return { kind: 'consistent' }
  const base = coherence(frame, frame.values)
  const tried = [...candidates(evidence, frame, suspects), ...unknown(frame, suspects)].map((candidate) => ({
    candidate,
    score: coherenceWith(frame, candidate) + candidate.prior - base + noctRowGain(evidence, candidate),
  }))
  return judge(evidence, tried)
}

/** Fields whose best other value would make the record likelier by more than a slip is unlikely. */
export function suspectsOf(frame: Frame): readonly number[] {
  const { gains } = strains(frame)
  const sum = new Float64Array(pointers.length)
  sources.forEach((places, c) => places.forEach((place) => (sum[place]! += Math.max(0, gains[c]!))))
  const byIdentity = identityGains(frame)
  identities.forEach(({ plus, minus }, i) => [...plus, ...minus].forEach((place) => (sum[place]! += byIdentity[i]!)))
  const shape = shapeGain(frame)
  pointers.forEach((_, place) => (sum[place]! += shape[place]!))
  return pointers.flatMap((_, place) =>
    frame.present[place] && (sum[place]! > threshold || frame.unfinished[place]) ? [place] : [],
  )
}

const threshold = 4.5
