import { figure } from '../../findings/message.ts'
import { fuseSizes, nextFuse } from '../../physics/fuses.ts'
import { throughBattery } from '../bank.ts'
import { allowable, inside } from '../cable-figures.ts'
import { nextBatteryCable } from '../next-cable.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const batteryFuseLow = reviewRule({
  id: 'battery-fuse-low',
  severity: 'warning',
  reason:
    'A fuse that opens in normal use leaves the boat dark, and gets replaced by a larger one that protects nothing.',
  source: 'design current at most the fuse (IEC 60364-4-43, from memory)',
  messages: {
    aWouldOn: '; {size} A would, on a cable of {thicker} ({why})',
    low: 'Up to {needed} flow to or from the battery, more than its fuse of {fuse} carries{part}',
    carriesWithA: 'carries {needed} with a quarter to spare',
  },

  check(system) {
    const { fuse, cable } = system.system.battery
    const needed = throughBattery(system)
    if (!fuse || needed === null || needed <= fuse.value) return null
    const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
    const size = nextFuse(fuseSizes.vehicle, 1.25 * needed)
    const fits = size !== null && (iz === null || size <= iz)
    const thicker = size !== null && !fits ? nextBatteryCable(system, size) : undefined
    return {
      say: 'low',
      with: {
        needed: figure(needed, 'A'),
        fuse: said(fuse),
        part: thicker ? { say: 'aWouldOn', with: { size, thicker, why: thicker.why } } : null,
      },
      suspects: [fuse],
      ...(fits && {
        correction: {
          field: fuse,
          text: `${size} A`,
          why: { say: 'carriesWithA', with: { needed: figure(needed, 'A') } },
          certainty: 'guess' as const,
        },
      }),
    }
  },
})
