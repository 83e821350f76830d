import { usualAlpha } from '../../physics/coefficients.ts'
import type { Candidate } from './candidate.ts'
import { index, pointers, type Evidence } from '../evidence.ts'

/** Further readings that only help to choose between corrections; the open ratings carry none of them. */
export const noctPointers = ['/noct/voc', '/noct/isc'] as const

/** Worse than any that is fitted. */
const hopeless = 50

/** Spread of Voc and Isc at NOCT about what the translation leads to; estimated from rounding and class-typical values. */
const spread = 0.012

/**
 * How much better Voc and Isc at NOCT fit a corrected record than the typed one, as logarithm; 0 where the sheet gives
 * neither.
 *
 *     Isc' = 0.8 Isc (1 + alpha (T - 25)),  Voc' = Voc (1 + beta (T - 25) + 0.042 ln 0.8)
 *
 * @source translation of I-V curves, IEC 60891 (from memory); 0.042 Voc is the usual n Ns k T/q of silicon
 */
export function noctRowGain(evidence: Evidence, candidate: Candidate): number {
  if (!candidate.fields.some((field) => translated.includes(field))) return 0
  if (noctPointers.every((pointer) => !evidence.readings[pointer])) return 0
  const typed = (field: number) => evidence.readings[pointers[field]!]?.value
  const changed = (field: number) => {
    const i = candidate.fields.indexOf(field)
    return i < 0 ? typed(field) : candidate.values[i]
  }
  return fit(evidence, changed) - fit(evidence, typed)
}

/** What the row follows from. */
const translated: readonly number[] = [index.noct, index.voc, index.isc]

function fit({ readings }: Evidence, value: (field: number) => number | undefined): number {
  const warm = (value(index.noct) ?? 45) - 25
  const pairs = [
    [readings['/noct/voc']?.value, value(index.voc), 1 - 0.003 * warm + 0.042 * Math.log(0.8)],
    [readings['/noct/isc']?.value, value(index.isc), 0.8 * (1 + usualAlpha * warm)],
  ] as const
  return pairs.reduce((sum, [there, here, share]) => {
    if (there === undefined || here === undefined || there <= 0 || here <= 0) return sum
    // a temperature that no panel reaches
    if (share <= 0) return sum - hopeless
    const z = Math.log(there / (here * share)) / spread
    return sum - 2.5 * Math.log1p((z * z) / 4)
  }, 0)
}
