import { panelRule } from '../about.ts'
import { inYears } from '../words.ts'
import { inside } from '../band.ts'

export const warrantyYearsUnusual = panelRule({
  id: 'warranty-years-unusual',
  severity: 'warning',
  reason: 'Warranties run for 1 to 40 years; another number is months or lost a digit.',
  source: 'common practice, no source',
  messages: {
    unusual: 'A warranty of {years} is outside what makers promise',
  },

  check({ warranty: { output, workmanship } }) {
    return [...output.map((s) => s.years), workmanship.years].flatMap((years) =>
      years && !inside(years.value, [0.25, 40])
        ? [{ say: 'unusual', with: { years: inYears(years) }, suspects: [years] as const }]
        : [],
    )
  },
})
