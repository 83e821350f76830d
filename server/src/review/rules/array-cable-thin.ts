import { figure, type Param } from '../../findings/message.ts'
import type { Measure } from '../../records/field.ts'
import { ampacitySource, onRoof } from '../cable-figures.ts'
import { nextArrayCable } from '../next-cable.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const arrayCableThin = reviewRule({
  id: 'array-cable-thin',
  severity: 'error',
  reason: 'A cable that carries more than it is made for gets hot and starts a fire.',
  source: ampacitySource,
  messages: {
    thin: '1.25 x Isc is {current}; {size} with {insulation} insulation carries about {iz} in {air}, without a second 1.25 (US practice)',
    tooSoft:
      'Insulation for {insulation} can carry no load at all in air of {air}, and 1.25 x Isc is {current}; 90 °C or more is usual there',
  },

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const { isc_design_a: current, cable } = figures.arrays[i] ?? {}
      const own = array.entry.cable
      const iz = cable?.ampacity_a ?? null
      if (!own.size || !current || iz === null || current <= iz) return []
      const air = own.ambient ? said(own.ambient) : { value: onRoof.air, unit: '°C' }
      const correction = nextArrayCable(system, array, figures.arrays[i]!)
      return [
        iz === 0 && own.insulation
          ? tooSoft(own.insulation, figure(current, 'A'), air)
          : {
              say: 'thin',
              with: {
                current: figure(current, 'A'),
                size: said(own.size),
                insulation: said(own.insulation),
                iz: figure(iz, 'A'),
                air,
              },
              suspects: [own.size],
              ...(correction && { correction }),
            },
      ]
    })
  },
})

const tooSoft = (insulation: Measure, current: Param, air: Param) =>
  ({ say: 'tooSoft', with: { insulation: said(insulation), air, current }, suspects: [insulation] }) as const
