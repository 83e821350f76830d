import { panelRule } from '../about.ts'
import { inYears } from '../words.ts'

export const outputWarrantyShorter = panelRule({
  id: 'output-warranty-shorter',
  severity: 'warning',
  reason:
    'Makers promise output for longer than workmanship; the other way round the two are usually typed in each other’s place.',
  source: 'common practice, no source',
  messages: {
    found: 'The output warranty of {longest} is shorter than the workmanship warranty of {years}',
    exchanged:
      'The output warranty is probably {years} and that of workmanship {longest}: output is promised for longer',
    theTwoTyped: 'the two typed in each other’s place',
  },

  check({ warranty: { output, workmanship } }) {
    const { years } = workmanship
    const longest = output.flatMap((step) => step.years ?? []).sort((a, b) => b.value - a.value)[0]
    if (!years || !longest || longest.value >= years.value) return null
    const swap = output.length === 1
    return {
      say: swap ? 'exchanged' : 'found',
      with: { longest: inYears(longest), years: inYears(years) },
      suspects: [longest, years],
      ...(swap && {
        saysFix: true,
        correction: {
          field: longest,
          text: years.text,
          why: { say: 'theTwoTyped' },
          certainty: 'guess' as const,
          also: [{ field: years, text: longest.text }],
        },
      }),
    }
  },
})
