import type { Frame } from '../density/coherence.ts'
import { index } from '../evidence.ts'

/**
 * Logarithm of how much rarer each further decimal makes a coefficient of a framed panel, where a sheet prints the one like it without. A few in a
 * hundred sheets do (estimated), and each of ten times as many values is a tenth as likely. Sheets of flexible panels print in many ways.
 */
export const perFurtherDecimal = 5

/** Half of the last digit that is usual, as a share. */
const usual: Readonly<Record<number, number>> = { [index.gamma]: 5e-5, [index.beta]: 5e-5, [index.alpha]: 5e-6 }
const alike: Readonly<Record<number, number>> = { [index.gamma]: index.beta, [index.beta]: index.gamma }

/** What a coefficient could gain by the decimals that the one like it has. */
export function finerGain({ halves, present, absolute, isGlass }: Frame, field: number): number {
  const most = usual[field]
  if (!isGlass || most === undefined || !present[field] || absolute[field]) return 0
  const other = alike[field]
  const step = other !== undefined && present[other] && !absolute[other] ? Math.min(most, halves[other]!) : most
  const decimals = Math.round(Math.log10(step / halves[field]!))
  return decimals > 0 ? Math.min(mostOfForm, perFurtherDecimal * decimals) : 0
}

/** The most that a printed form says of a coefficient; estimated. */
export const mostOfForm = 6
