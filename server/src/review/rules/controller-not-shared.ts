import { listed } from '../../findings/listed.ts'
import type { Doubt } from '../../rules/rule.ts'
import type { ReviewRule } from '../rule.ts'

export const controllerNotShared: ReviewRule = {
  id: 'controller-not-shared',
  severity: 'error',
  reason: 'Arrays on one input add their currents, so it must be certain whose controller it is.',
  source: 'arithmetic',

  check({ arrays, system }) {
    return arrays.flatMap<Doubt>(({ entry, shares }) => {
      const { shares_controller_with: other, controller } = entry
      if (!other) return []
      if (!shares) {
        const ids = system.arrays.flatMap(({ id }) => (id && id.value !== entry.id?.value ? [id.value] : []))
        return [
          {
            message: `No other array is called ${other.text}${ids.length > 0 ? `; there is ${listed(ids)}` : ''}`,
            suspects: [other] as const,
          },
        ]
      }
      const id = controller.id
      return id
        ? [
            {
              message: `This array shares the controller with ${other.text} and names ${id.text} besides`,
              suspects: [other, id] as const,
            },
          ]
        : []
    })
  },
}
