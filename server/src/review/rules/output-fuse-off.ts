import { short } from '../../rules/band.ts'
import { fuseSizes, nextFuse } from '../../physics/fuses.ts'
import { continuous } from '../bank-current.ts'
import { bankOf, chargeCurrent } from '../bank.ts'
import { allowable, ampacitySource, inside } from '../cable-figures.ts'
import { controllersOf } from '../controllers.ts'
import { said } from '../said.ts'
import type { Doubt } from '../../rules/rule.ts'
import type { ReviewRule } from '../rule.ts'

export const outputFuseOff: ReviewRule = {
  id: 'output-fuse-off',
  severity: 'warning',
  reason:
    'The output of a controller needs a fuse at the end of the battery that carries its current and protects its cable.',
  source: `design current at most the fuse, fuse at most the cable (IEC 60364-4-43, from memory); ${ampacitySource}`,

  check(system) {
    const bank = bankOf(system)
    if (!bank) return null
    return controllersOf(system).flatMap<Doubt>((group) => {
      const { fuse, cable } = group.arrays[0].entry.output
      const charge = chargeCurrent(group, bank)
      const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
      if (fuse && iz !== null && iz < fuse.value)
        return [
          {
            message: `The output fuse of ${said(fuse)} is larger than the ${short(iz)} A that ${said(cable.size)} with ${said(cable.insulation)} insulation may carry as a guide value`,
            suspects: [fuse, cable.size ?? fuse] as const,
            severity: 'error' as const,
          },
        ]
      if (charge === null) return []
      const design = continuous * charge
      if (cable.size && iz !== null && iz < design)
        return [
          {
            message: `The controller charges with up to ${short(charge)} A; 1.25 times that is ${short(design)} A, and ${said(cable.size)} with ${said(cable.insulation)} insulation may carry ${short(iz)} A as a guide value`,
            suspects: [cable.size] as const,
            severity: 'error' as const,
          },
        ]
      if (!fuse || design <= fuse.value) return []
      const size = nextFuse(fuseSizes.vehicle, design)
      const fits = size !== null && (iz === null || size <= iz)
      return [
        {
          message: `The controller charges with up to ${short(charge)} A; 1.25 times that is ${short(design)} A, more than its output fuse of ${said(fuse)}`,
          suspects: [fuse] as const,
          ...(fits && {
            correction: {
              field: fuse,
              text: `${size} A`,
              why: `at least ${short(design)} A`,
              certainty: 'guess' as const,
            },
          }),
        },
      ]
    })
  },
}
