import { figure } from '../../findings/message.ts'
import { fuseSizes, nextFuse } from '../../physics/fuses.ts'
import { mainCurrent, mainDesignCurrent } from '../bank-current.ts'
import { allowable, inside } from '../cable-figures.ts'
import { reviewRule } from '../rule.ts'

export const batteryFuseMissing = reviewRule({
  id: 'battery-fuse-missing',
  severity: 'error',
  reason: 'A short circuit of the bank melts its cable in seconds unless a fuse at the battery opens first.',
  source: 'ABYC E-11 and ISO 13297 (as quoted by marine trade pages): a fuse within 18 to 20 cm of the battery',
  messages: {
    aWouldCarry: '; {size} A would carry the {needed} of normal use',
    andProtectThe: ' and protect the cable, which may carry {iz}',
    missing: 'No fuse is given for the battery cable{part}{part2}',
  },

  check(system) {
    const { fuse, cable, battery, in_parallel: parallel } = system.system.battery
    const place = cable.size ?? battery.id ?? parallel
    if (fuse || !system.battery || !place) return null
    const needed = mainCurrent(system)?.amps ?? null
    const design = mainDesignCurrent(system)
    const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
    const size = design ? nextFuse(fuseSizes.vehicle, design) : null
    const fits = size !== null && (iz === null || size <= iz)
    return {
      say: 'missing',
      with: {
        part: fits ? { say: 'aWouldCarry', with: { size, needed: figure(needed!, 'A') } } : null,
        part2: fits && iz !== null ? { say: 'andProtectThe', with: { iz: figure(iz, 'A') } } : null,
      },
      suspects: [place],
    }
  },
})
