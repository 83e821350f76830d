import { panelRule } from '../about.ts'
import { inYears } from '../words.ts'

export const flexibleLongWarranty = panelRule({
  id: 'flexible-long-warranty',
  severity: 'information',
  reason:
    'A long output warranty on a flexible panel usually lives in its small print; glued-down panels have been seen to last 1 to 5 years on decks.',
  source: 'common practice, no source',
  messages: {
    andOnWorkmanship: ', and {years} on workmanship',
    andNoneOn: ', and none on workmanship is recorded',
    found: 'A flexible panel promises {longest} of output{work}',
  },

  check({ construction, warranty: { output, workmanship } }) {
    const longest = output.flatMap((step) => step.years ?? []).sort((a, b) => b.value - a.value)[0]
    if (construction?.value !== 'flexible' || !longest || longest.value <= 10) return null
    const work = workmanship.years
      ? { say: 'andOnWorkmanship', with: { years: workmanship.years } }
      : { say: 'andNoneOn' }
    return { say: 'found', with: { longest: inYears(longest), work }, suspects: [longest] }
  },
})
