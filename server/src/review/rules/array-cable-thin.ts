import { short } from '../../rules/band.ts'
import type { Measure } from '../../records/field.ts'
import { ampacitySource, onRoof } from '../cable-figures.ts'
import { nextArrayCable } from '../next-cable.ts'
import { said } from '../said.ts'
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
      const air = own.ambient ? said(own.ambient) : `${onRoof.air} °C`
      if (iz === 0 && own.insulation) return [tooSoft(own.insulation, short(current), air)]
      const correction = nextArrayCable(system, array, figures.arrays[i]!)
      return [
        {
          message: `1.25 x Isc is ${short(current)} A, and ${said(own.size)} with ${said(own.insulation)} insulation may carry ${short(iz)} A as a guide value in ${air}`,
          suspects: [own.size] as const,
          ...(correction && { correction }),
        },
      ]
    })
  },
}

const tooSoft = (insulation: Measure, current: string, air: string) => ({
  message: `Insulation for ${said(insulation)} can carry no load at all in air of ${air}, and 1.25 x Isc is ${current} A; 90 °C or more is usual there`,
  suspects: [insulation] as const,
})
