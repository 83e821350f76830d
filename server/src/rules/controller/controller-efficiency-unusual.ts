import { controllerRule } from '../over.ts'

export const controllerEfficiencyUnusual = controllerRule({
  id: 'controller-efficiency-unusual',
  severity: 'warning',
  reason: 'No controller is without loss, and a poor one still passes on most of the power.',
  source: 'common practice, no source',
  messages: {
    unusual: 'An efficiency of {efficiency} is outside the usual 85 % to 99.5 %',
  },

  check({ efficiency }) {
    if (!efficiency || (0.85 <= efficiency.value && efficiency.value <= 0.995)) return null
    return {
      say: 'unusual',
      with: { efficiency },
      suspects: [efficiency],
    }
  },
})
