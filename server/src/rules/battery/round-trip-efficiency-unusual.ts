import { batteryRule } from '../over.ts'

export const roundTripEfficiencyUnusual = batteryRule({
  id: 'round-trip-efficiency-unusual',
  severity: 'warning',
  reason: 'Every battery loses something, and none loses nearly half.',
  source: 'trade values from memory, to be confirmed on the maker’s sheet',
  messages: {
    unusual: 'A round-trip efficiency of {efficiency} is outside the usual 60 % to 99 %',
  },

  check({ round_trip_efficiency: efficiency }) {
    if (!efficiency || (0.6 <= efficiency.value && efficiency.value <= 0.99)) return null
    return {
      say: 'unusual',
      with: { efficiency },
      suspects: [efficiency],
    }
  },
})
