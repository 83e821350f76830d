import type { Messages } from '../../findings/message.ts'
import { figure } from '../../findings/message.ts'
import { fuseSizes, nextFuse } from '../../physics/fuses.ts'
import { continuous } from '../bank-current.ts'
import { bankOf, chargeCurrent } from '../bank.ts'
import { allowable, ampacitySource, inside } from '../cable-figures.ts'
import { controllersOf } from '../controllers.ts'
import { said } from '../said.ts'
import type { Doubt } from '../../findings/rule.ts'
import { reviewRule } from '../rule.ts'

export const outputFuseOff = reviewRule<Messages>({
  id: 'output-fuse-off',
  severity: 'warning',
  reason:
    'The output of a controller needs a fuse at the end of the battery that carries its current and protects its cable.',
  source: `design current at most the fuse, fuse at most the cable (IEC 60364-4-43, from memory); ${ampacitySource}`,
  messages: {
    theOutputFuse:
      'The output fuse of {fuse} is larger than the {iz} that {size} with {insulation} insulation may carry as a guide value',
    theControllerCharges:
      'The controller charges with up to {charge}; 1.25 times that is {design}, and {size} with {insulation} insulation may carry {iz} as a guide value',
    theControllerCharges2:
      'The controller charges with up to {charge}; 1.25 times that is {design}, more than its output fuse of {fuse}',
    tooSmall: 'the controller charges with up to {charge}, times 1.25',
    atLeast: 'at least {design}',
  },

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
            say: 'theOutputFuse',
            with: { fuse: said(fuse), iz: figure(iz, 'A'), size: said(cable.size), insulation: said(cable.insulation) },
            suspects: [fuse, cable.size ?? fuse],
            severity: 'error' as const,
          },
        ]
      if (charge === null) return []
      const design = continuous * charge
      if (cable.size && iz !== null && iz < design)
        return [
          {
            say: 'theControllerCharges',
            with: {
              charge: figure(charge, 'A'),
              design: figure(design, 'A'),
              size: said(cable.size),
              insulation: said(cable.insulation),
              iz: figure(iz, 'A'),
            },
            suspects: [cable.size],
            severity: 'error' as const,
          },
        ]
      if (!fuse || design <= fuse.value) return []
      const size = nextFuse(fuseSizes.vehicle, design)
      const fits = size !== null && (iz === null || size <= iz)
      return [
        {
          ...(fits
            ? { say: 'tooSmall', with: { charge: figure(charge, 'A') } }
            : {
                say: 'theControllerCharges2',
                with: { charge: figure(charge, 'A'), design: figure(design, 'A'), fuse: said(fuse) },
              }),
          suspects: [fuse],
          ...(fits && {
            correction: {
              field: fuse,
              text: `${size} A`,
              why: { say: 'atLeast', with: { design: figure(design, 'A') } },
              certainty: 'guess' as const,
            },
          }),
        },
      ]
    })
  },
})
