import type { Messages } from '../../findings/message.ts'
import type { Doubt } from '../../findings/rule.ts'
import { reviewRule } from '../rule.ts'

export const controllerNotShared = reviewRule<Messages>({
  id: 'controller-not-shared',
  severity: 'error',
  reason: 'Arrays on one input add their currents, so it must be certain whose controller it is.',
  source: 'arithmetic',
  messages: {
    thereIs: '; there is {ids}',
    noOtherArray: 'No other array is called {other}{part}',
    thisArrayShares: 'This array shares the controller with {other} and names {id} besides',
  },

  check({ arrays, system }) {
    return arrays.flatMap<Doubt>(({ entry, shares }) => {
      const { shares_controller_with: other, controller } = entry
      if (!other) return []
      if (!shares) {
        const ids = system.arrays.flatMap(({ id }) => (id && id.value !== entry.id?.value ? [id.value] : []))
        return [
          {
            say: 'noOtherArray',
            with: {
              other,
              part: ids.length > 0 ? { say: 'thereIs', with: { ids: { list: ids, last: 'and' } } } : null,
            },
            suspects: [other] as const,
          },
        ]
      }
      const id = controller.id
      return id
        ? [
            {
              say: 'thisArrayShares',
              with: { other, id },
              suspects: [other, id] as const,
            },
          ]
        : []
    })
  },
})
