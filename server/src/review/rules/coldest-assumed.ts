import type { ReviewRule } from '../rule.ts'

export const coldestAssumed: ReviewRule = {
  id: 'coldest-assumed',
  severity: 'hint',
  reason: 'The cold-day voltage decides how many panels may be in series.',
  source: 'the site of the system',

  check({ coldest, system, arrays }) {
    const place = system.kind ?? system.name
    if (coldest.from !== 'assumed' || !place || arrays.length === 0) return null
    return {
      message: `No coldest temperature of the site is given; ${coldest.value} °C is assumed for the voltage of the strings`,
      suspects: [system.site.climate.id ?? place],
    }
  },
}
