import { short } from '../../rules/band.ts'
import { allowable, ampacitySource, onRoof } from '../cable-figures.ts'
import { nextCable } from '../next-cable.ts'
import type { ReviewRule } from '../rule.ts'

export const arrayCableThin: ReviewRule = {
  id: 'array-cable-thin',
  severity: 'error',
  reason: 'A cable that carries more than it is made for gets hot and starts a fire.',
  source: ampacitySource,

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const { isc_design_a: current, cable } = figures.arrays[i] ?? {}
      const own = array.entry.cable
      const iz = cable?.ampacity_a ?? null
      if (!own.size || !current || iz === null || current <= iz) return []
      const correction = nextCable(own, (size) => {
        const next = allowable(own, size, onRoof) ?? 0
        return current <= next ? `${short(next)} A` : null
      })
      return [
        {
          message: `1.25 x Isc is ${short(current)} A, and ${own.size.text} with ${own.insulation?.text} insulation may carry ${short(iz)} A as a guide value in ${own.ambient?.text ?? `${onRoof.air} °C`}`,
          suspects: [own.size] as const,
          ...(correction && { correction }),
        },
      ]
    })
  },
}
