import { ofKind, type Candidate } from './candidate.ts'
import { reason } from './reasons.ts'
import { sources, type Frame } from '../density/coherence.ts'
import { expected } from '../density/core.ts'
import { index, type Evidence } from '../evidence.ts'
import { anothersLog } from '../family/family.ts'
import { coordinate } from '../density/features.ts'
import { grown } from '../family/nearest-sibling.ts'

export const unknownReason = reason({ say: 'unknown' })

/**
 * Values that are wrong in a way which cannot be undone: another model's, or another kind of mistake. The field is put
 * where all others expect it; the chance counts all values that it could have had.
 */
export function unknown(evidence: Evidence, frame: Frame, suspects: readonly number[]): readonly Candidate[] {
  return sources.flatMap((fields, c) => {
    if (!frame.core.formed[c] || c === coordinate.cells || c === coordinate.area) return []
    return fields.flatMap((field) => {
      if (!suspects.includes(field) || frame.absolute[field]) return []
      const { shift, sd } = meant(frame, c, field)
      const raw =
        field === index.gamma || field === index.beta || field === index.alpha ? 0.01 : field === index.noct ? 1 : 0
      const value = frame.values[field]!
      if (!raw && !(Math.abs(shift) < 3)) return []
      const lent = raw ? 0 : anothersLog(frame.family, evidence, field)
      const usual = raw === 1 ? 20 : raw ? 0.4 : 0.24
      const range = usual * (1 + ((2 * shift) / usual) ** 2)
      return [
        {
          fields: [field],
          values: [raw ? value + raw * shift : value * Math.exp(shift)],
          texts: [],
          why: unknownReason,
          prior:
            ofKind -
            Math.log(5) -
            (lent > 0 ? borrowed : unexplained) +
            Math.log((sd * Math.sqrt(2 * Math.PI)) / range) -
            (raw ? 1 : 0) +
            lent,
        },
      ]
    })
  })
}

/** Where the rest of the record, and a sibling, expect the coordinate of a field, from where it is. */
function meant({ core, stand, family, values }: Frame, c: number, field: number): { shift: number; sd: number } {
  const here = expected(core, stand, c)
  const there = family && grown(family.nearest, values, field)
  if (!there) return here
  const sure = [here, there].map(({ sd }) => 1 / sd ** 2) as [number, number]
  const both = sure[0] + sure[1]
  return { shift: (sure[0] * here.shift + sure[1] * there.shift) / both, sd: 1 / Math.sqrt(both) }
}

/** Odds against a value that a sibling has, and one that nothing explains: see `likeTrueRecords`. */
const borrowed = 1.25
const unexplained = 2.2
