import type { MeasuredFindings } from './measured-findings.ts'
import { isOff, type Reading } from './string.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inCatalogue } from '../../wording/phrase.ts'
import type { Cause } from './causes.ts'

/**
 * What is thought of one measured value, in a word or two; the cause of a string is shown at the value that shows it, and the
 * others are low or high with it.
 */
export function verdictOf(one: MeasuredFindings, reading: Reading, bundle?: Bundle): string {
  const said = (word: string) => translated(word, bundle)
  const { low, high, diagnosis, isMistyped, string } = one
  if (isMistyped) return said(inCatalogue`mistyped?`)
  const { quantity, off, apart } = reading
  const first = low[0]?.reading.quantity ?? (string.readings.has('imp') ? 'imp' : 'isc')
  const cause = diagnosis && quantity === first ? diagnosis.cause : null
  const isLow = low.some((doubt) => doubt.reading.quantity === quantity) || (isOff(off, string.limit) && off!.share < 0)
  const isHigh = high.some((doubt) => doubt.reading.quantity === quantity)
  const word = isLow ? inCatalogue`low` : isHigh ? inCatalogue`high` : null
  if (word || cause) return [word, cause && causes[cause]].flatMap((text) => (text ? said(text) : [])).join(': ')
  return said(off || apart ? inCatalogue`in order` : inCatalogue`not compared`)
}

const causes: Readonly<Record<Cause, string>> = {
  'panel missing': inCatalogue`panel missing`,
  'bypass diode conducting': inCatalogue`bypass diode conducting`,
  'shade or dirt': inCatalogue`shade or dirt`,
  'string of another array': inCatalogue`string of another array`,
  reversed: inCatalogue`reversed`,
  aged: inCatalogue`aged`,
}
