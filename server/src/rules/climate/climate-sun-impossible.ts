import { figure } from '../../findings/message.ts'
import { extraterrestrialDay, meanDays, solarConstant } from '../../physics/sun.ts'
import { byMonth } from '../../values/months.ts'
import { monthName } from '../../findings/months.ts'
import { climateRule } from '../over.ts'

const slips = [
  { factor: 3.6, why: { say: 'megajoules' } },
  { factor: 30.4, why: { say: 'sumOfMonth' } },
  { factor: 1000, why: { say: 'wattHours' } },
]

export const climateSunImpossible = climateRule({
  id: 'climate-sun-impossible',
  severity: 'error',
  reason: 'More sun than reaches the top of the atmosphere cannot arrive; a month typed in MJ, or as a sum, shows so.',
  source:
    'clearness of months 0.25 to 0.75; a clear sky gives 0.64 to 0.75 of the sun above the atmosphere (own sums with Haurwitz 1945)',
  messages: {
    megajoules: 'would fit (MJ typed as kWh)',
    sumOfMonth: 'would fit (the sum of the month typed)',
    wattHours: 'would fit (Wh typed as kWh)',
    instead: '; {value} {why}',
    impossible: '{sun} in {month} is {share} of the {above} a day above the atmosphere; 15 to 72 % is usual{why}',
  },

  check({ latitude, sun }) {
    if (!latitude || Math.abs(latitude.value) > 90) return null
    return [...byMonth(sun)].flatMap(([month, field]) => {
      const above = extraterrestrialDay(latitude.value, meanDays[month - 1]!, solarConstant) / 1000
      if (above < 0.5 || field.value < 0) return []
      const clearness = field.value / above
      if (0.15 <= clearness && clearness <= 0.72) return []
      const slip = slips.find(({ factor }) => 0.2 <= clearness / factor && clearness / factor <= 0.72)
      const why =
        0.72 < clearness && slip
          ? { say: 'instead', with: { value: figure(field.value / slip.factor), why: slip.why } }
          : null
      return [
        {
          say: 'impossible',
          with: {
            sun: field,
            month: monthName(month),
            share: figure(100 * clearness, '%'),
            above: figure(above, 'kWh/m2'),
            why,
          },
          suspects: [field, latitude],
          severity: 0.8 < clearness ? ('error' as const) : ('information' as const),
        },
      ]
    })
  },
})
