import type { Candidate } from '../typos/candidate.ts'
import { coherence, type Frame } from './coherence.ts'
import { pointers } from '../evidence.ts'

// used again by each call, as some hundreds of candidates are tried on a record; the typed values stay as they are
const scratch = new Float64Array(pointers.length)
const steps = new Float64Array(pointers.length)

/** How well the record would hang together with a candidate in place; -Infinity where that is certainly below `floor`. */
export function coherenceWith(frame: Frame, { fields, values, halves }: Candidate, floor: number): number {
  scratch.set(frame.values)
  steps.set(frame.halves)
  fields.forEach((field, i) => (scratch[field] = values[i]!))
  if (halves) fields.forEach((field, i) => (steps[field] = halves[i]!))
  return coherence(frame, scratch, steps, fields, floor)
}
