import type { PanelRule } from '../about.ts'
import { inYears } from '../words.ts'

export const outputWarrantyShorter: PanelRule = {
  id: 'output-warranty-shorter',
  severity: 'warning',
  reason:
    'Makers promise output for longer than workmanship; the other way round the two are usually typed in each other’s place.',
  source: 'common practice, no source',

  check({ warranty: { output, workmanship } }) {
    const { years } = workmanship
    const longest = output.flatMap((step) => step.years ?? []).sort((a, b) => b.value - a.value)[0]
    if (!years || !longest || longest.value >= years.value) return null
    const swap = output.length === 1
    return {
      message: `The output warranty of ${inYears(longest)} is shorter than the workmanship warranty of ${inYears(years)}`,
      suspects: [longest, years],
      ...(swap && {
        correction: {
          field: longest,
          text: years.text,
          why: 'the two typed in each other’s place',
          certainty: 'guess' as const,
          also: [{ field: years, text: longest.text }],
        },
      }),
    }
  },
}
