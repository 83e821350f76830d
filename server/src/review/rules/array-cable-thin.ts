import { celsius, figure, type Param } from '../../findings/message.ts'
import type { Proposal } from '../../findings/rule.ts'
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
    thin: '{size} carries {iz} in {air}; 1.25 x Isc is {current}, without a second 1.25 (US practice)',
    noneCarries:
      '{size} with {insulation} insulation carries {iz} in {air}; 1.25 x Isc is {current}, without a second 1.25 (US practice)',
    tooSoft:
      'Insulation for {insulation} can carry no load at all in air of {air}, and 1.25 x Isc is {current}; 90 °C or more is usual there',
  },

  check(system, figures) {
    return system.arrays.flatMap((array, i) => {
      const { isc_design_a: current, cable } = figures.arrays[i] ?? {}
      const own = array.entry.cable
      const iz = cable?.ampacity_a ?? null
      if (!own.size || !current || iz === null || current <= iz) return []
      const air = own.ambient ? said(own.ambient) : celsius(onRoof.air)
      const correction = nextArrayCable(system, array, figures.arrays[i]!)
      return [
        iz === 0 && own.insulation
          ? tooSoft(own.insulation, figure(current, 'A'), air)
          : thin(own.size, own.insulation, { current: figure(current, 'A'), iz: figure(iz, 'A'), air }, correction),
      ]
    })
  },
})

const thin = (
  size: Measure,
  insulation: Measure | undefined,
  known: Readonly<Record<'current' | 'iz' | 'air', Param>>,
  correction: Proposal | undefined,
) => {
  const suspects = [size] as const
  return correction
    ? ({ say: 'thin', with: { ...known, size: said(size) }, suspects, correction } as const)
    : ({ say: 'noneCarries', with: { ...known, size: said(size), insulation: said(insulation) }, suspects } as const)
}

const tooSoft = (insulation: Measure, current: Param, air: Param) =>
  ({ say: 'tooSoft', with: { insulation: said(insulation), air, current }, suspects: [insulation] }) as const
