import { celsius } from '../../findings/message.ts'
import { reviewRule } from '../rule.ts'

export const coldestAssumed = reviewRule({
  id: 'coldest-assumed',
  severity: 'hint',
  reason: 'The cold-day voltage decides how many panels may be in series.',
  source: 'the site of the system',
  messages: {
    assumed: 'No coldest temperature of the site is given; {coldest} is assumed for the voltage of the strings',
  },

  check({ coldest, system, arrays }) {
    const place = system.kind ?? system.name
    if (coldest.from !== 'assumed' || !place || arrays.length === 0) return null
    return {
      say: 'assumed',
      with: { coldest: celsius(coldest.value) },
      suspects: [system.site.climate.id ?? place],
    }
  },
})
