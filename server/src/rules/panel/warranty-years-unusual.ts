import type { PanelRule } from '../about.ts'
import { inYears } from '../words.ts'
import { inside } from '../band.ts'

export const warrantyYearsUnusual: PanelRule = {
  id: 'warranty-years-unusual',
  severity: 'warning',
  reason: 'Warranties run for 1 to 40 years; another number is months or lost a digit.',
  source: 'common practice, no source',

  check({ warranty: { output, workmanship } }) {
    return [...output.map((s) => s.years), workmanship.years].flatMap((years) =>
      years && !inside(years.value, [0.25, 40])
        ? [{ message: `A warranty of ${inYears(years)} is outside what makers promise`, suspects: [years] as const }]
        : [],
    )
  },
}
