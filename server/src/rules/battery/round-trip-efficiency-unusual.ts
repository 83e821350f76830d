import type { Battery } from '../../records/records.generated.ts'
import type { Rule } from '../rule.ts'

export const roundTripEfficiencyUnusual: Rule<Battery> = {
  id: 'round-trip-efficiency-unusual',
  severity: 'warning',
  reason: 'Every battery loses something, and none loses nearly half.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',

  check({ round_trip_efficiency: efficiency }) {
    if (!efficiency || (0.6 <= efficiency.value && efficiency.value <= 0.99)) return null
    return {
      message: `A round-trip efficiency of ${efficiency.text} lies outside the usual 60 % to 99 %`,
      suspects: [efficiency],
    }
  },
}
