import type { Climate } from '../../records/records.generated.ts'
import { extraterrestrialDay, meanDays, solarConstant } from '../../physics/sun.ts'
import { short } from '../band.ts'
import { byMonth, monthNames } from '../../values/months.ts'
import type { Rule } from '../rule.ts'

const slips = [
  { factor: 3.6, why: 'would fit, had MJ been typed as kWh' },
  { factor: 30.4, why: 'would fit, had the sum of the month been typed' },
  { factor: 1000, why: 'would fit, had Wh been typed as kWh' },
]

export const climateSunImpossible: Rule<Climate> = {
  id: 'climate-sun-impossible',
  severity: 'error',
  reason: 'More sun than reaches the top of the atmosphere cannot arrive; a month typed in MJ, or as a sum, shows so.',
  source:
    'clearness of months 0.25 to 0.75; a clear sky gives 0.64 to 0.75 of the sun above the atmosphere (own sums with Haurwitz 1945)',

  check({ latitude, sun }) {
    if (!latitude || Math.abs(latitude.value) > 90) return null
    return [...byMonth(sun)].flatMap(([month, field]) => {
      const above = extraterrestrialDay(latitude.value, meanDays[month - 1]!, solarConstant) / 1000
      if (above < 0.5 || field.value < 0) return []
      const clearness = field.value / above
      if (0.15 <= clearness && clearness <= 0.72) return []
      const slip = slips.find(({ factor }) => 0.2 <= clearness / factor && clearness / factor <= 0.72)
      const why = 0.72 < clearness && slip ? `; ${short(field.value / slip.factor)} ${slip.why}` : ''
      return [
        {
          message: `${field.text} in ${monthNames[month - 1]} is ${short(100 * clearness)} % of the ${short(above)} kWh/m2 a day above the atmosphere, where 15 % to 72 % is usual${why}`,
          suspects: [field, latitude] as const,
          severity: 0.8 < clearness ? ('error' as const) : ('information' as const),
        },
      ]
    })
  },
}
