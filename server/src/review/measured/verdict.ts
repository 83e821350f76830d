import type { MeasuredFindings } from './measured-findings.ts'
import { isOff, type Reading } from './string.ts'

/**
 * What is thought of one measured value, in a word or two; the cause of a string is shown at the value that shows it, and the
 * others are low or high with it.
 */
export function verdictOf(one: MeasuredFindings, reading: Reading): string {
  const { low, high, diagnosis, isMistyped, string } = one
  if (isMistyped) return 'mistyped?'
  const { quantity, off, apart } = reading
  const first = low[0]?.reading.quantity ?? (string.readings.has('imp') ? 'imp' : 'isc')
  const cause = diagnosis && quantity === first ? diagnosis.cause : null
  const isLow = low.some((doubt) => doubt.reading.quantity === quantity) || (isOff(off, string.limit) && off!.share < 0)
  const word = isLow ? 'low' : high.some((doubt) => doubt.reading.quantity === quantity) ? 'high' : null
  if (word || cause) return [word, cause].filter(Boolean).join(': ')
  return off || apart ? 'in order' : 'not compared'
}
