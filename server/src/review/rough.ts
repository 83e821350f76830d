import type { Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'

/** A number of a simulation in text: two digits, for it is worth no more. */
export function rough(value: number): string {
  const digits = Number(value.toPrecision(2))
  return String(Object.is(digits, -0) ? 0 : digits)
}

/** A share as text in per cent; what is under a tenth of one is said to be so. */
export function roughPercent(share: number, bundle?: Bundle): string {
  const percent = 100 * share
  return 0 < percent && percent < 0.095 ? sayIn(bundle)`under 0.1 %` : `${rough(percent)} %`
}
