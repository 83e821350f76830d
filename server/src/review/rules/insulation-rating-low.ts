import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const insulationRatingLow = reviewRule({
  id: 'insulation-rating-low',
  severity: 'warning',
  reason:
    'Under a sunlit panel or in an engine space a cable starts from 60 °C and more, so an insulation of a low rating softens.',
  source: 'common practice, no source; 33 CFR 183.425 (engine spaces)',
  messages: {
    low: 'Insulation for {insulation} is little for a cable on a hot roof or deck; 90 °C or more is usual',
  },

  check({ system }) {
    return system.arrays.flatMap(({ cable: { insulation } }) =>
      insulation && insulation.value < 90
        ? [
            {
              say: 'low',
              with: { insulation: said(insulation) },
              suspects: [insulation] as const,
            },
          ]
        : [],
    )
  },
})
