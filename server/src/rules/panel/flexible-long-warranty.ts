import type { PanelRule } from '../about.ts'
import { inYears } from '../words.ts'

export const flexibleLongWarranty: PanelRule = {
  id: 'flexible-long-warranty',
  severity: 'information',
  reason:
    'A long output warranty on a flexible panel usually lives in its small print; glued-down panels have been seen to last 1 to 5 years on decks.',
  source: 'common practice, no source',

  check({ construction, warranty: { output, workmanship } }) {
    const longest = output.flatMap((step) => step.years ?? []).sort((a, b) => b.value - a.value)[0]
    if (construction?.value !== 'flexible' || !longest || longest.value <= 10) return null
    const work = workmanship.years
      ? `, and ${workmanship.years.text} on workmanship`
      : ', and none on workmanship is recorded'
    return { message: `A flexible panel promises ${inYears(longest)} of output${work}`, suspects: [longest] }
  },
}
