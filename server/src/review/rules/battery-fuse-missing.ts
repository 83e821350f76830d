import { short } from '../../rules/band.ts'
import { fuseSizes, nextFuse } from '../../physics/fuses.ts'
import { mainCurrent, mainDesignCurrent } from '../bank-current.ts'
import { allowable, inside } from '../cable-figures.ts'
import type { ReviewRule } from '../rule.ts'

export const batteryFuseMissing: ReviewRule = {
  id: 'battery-fuse-missing',
  severity: 'error',
  reason: 'A short circuit of the bank melts its cable in seconds unless a fuse at the battery opens first.',
  source: 'ABYC E-11 and ISO 13297 (as quoted by marine trade pages): a fuse within 18 to 20 cm of the battery',

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
      message: `No fuse is given for the battery cable${fits ? `; ${size} A would carry the ${short(needed!)} A of normal use` : ''}${fits && iz !== null ? ` and protect the cable, which may carry ${short(iz)} A` : ''}`,
      suspects: [place],
    }
  },
}
