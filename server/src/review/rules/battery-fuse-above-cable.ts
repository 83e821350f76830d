import { short } from '../../rules/band.ts'
import { allowable, ampacitySource, inside } from '../cable-figures.ts'
import { fuseBelowCable } from '../main-pair.ts'
import { mainDesignCurrent } from '../bank-current.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const batteryFuseAboveCable: ReviewRule = {
  id: 'battery-fuse-above-cable',
  severity: 'error',
  reason: 'The fuse protects the cable: one that is larger than the cable lets it burn without opening.',
  source: `fuse at most the allowable current (IEC 60364-4-43, from memory); ${ampacitySource}`,

  check(system) {
    const { fuse, cable } = system.system.battery
    const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
    if (!fuse || !cable.size || iz === null || fuse.value <= iz) return null
    const correction = fuseBelowCable(system, { design: mainDesignCurrent(system) ?? 0, iz })
    return {
      message: `The fuse of ${said(fuse)} is larger than the ${short(iz)} A that ${said(cable.size)} with ${said(cable.insulation)} insulation may carry as a guide value`,
      suspects: [fuse, cable.size],
      ...(correction && { correction }),
    }
  },
}
