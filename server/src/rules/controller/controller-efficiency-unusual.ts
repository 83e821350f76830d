import type { Controller } from '../../records/records.generated.ts'
import type { Rule } from '../rule.ts'

export const controllerEfficiencyUnusual: Rule<Controller> = {
  id: 'controller-efficiency-unusual',
  severity: 'warning',
  reason: 'No controller is without loss, and a poor one still passes on most of the power.',
  source: 'common practice, no source',

  check({ efficiency }) {
    if (!efficiency || (0.85 <= efficiency.value && efficiency.value <= 0.995)) return null
    return {
      message: `An efficiency of ${efficiency.text} lies outside the usual 85 % to 99.5 %`,
      suspects: [efficiency],
    }
  },
}
