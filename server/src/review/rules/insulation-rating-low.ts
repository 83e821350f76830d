import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const insulationRatingLow: ReviewRule = {
  id: 'insulation-rating-low',
  severity: 'warning',
  reason:
    'Under a sunlit panel or in an engine space a cable starts from 60 °C and more, so an insulation of a low rating softens.',
  source: 'common practice, no source; 33 CFR 183.425 (engine spaces)',

  check({ system }) {
    return system.arrays.flatMap(({ cable: { insulation } }) =>
      insulation && insulation.value < 90
        ? [
            {
              message: `Insulation for ${said(insulation)} is little for a cable on a hot roof or deck; 90 °C or more is usual`,
              suspects: [insulation] as const,
            },
          ]
        : [],
    )
  },
}
