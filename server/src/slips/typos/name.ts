import type { Candidate } from './candidate.ts'
import { index, valueAt, type Evidence } from '../evidence.ts'

/** How much likelier a power is that the name says than one that it does not, as logarithm; estimated. */
const witness = 4

/** What the name of the model says of a corrected Pmax against the typed one, as logarithm; 0 where it says neither. */
export function nameGain(evidence: Evidence, { fields, values }: Candidate): number {
  const i = fields.indexOf(index.pmax)
  if (i < 0 || !evidence.named) return 0
  const isNamed = (power: number | undefined) => evidence.named!.some((n) => Math.abs(n - (power ?? NaN)) <= 0.5)
  return witness * (Number(isNamed(values[i])) - Number(isNamed(valueAt(evidence, index.pmax))))
}
