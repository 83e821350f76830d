import { figure } from '../../findings/message.ts'
import { allowable, ampacitySource, inside } from '../cable-figures.ts'
import { fuseBelowCable } from '../main-pair.ts'
import { mainDesignCurrent } from '../bank-current.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const batteryFuseAboveCable = reviewRule({
  id: 'battery-fuse-above-cable',
  severity: 'error',
  reason: 'The fuse protects the cable: one that is larger than the cable lets it burn without opening.',
  source: `fuse at most the allowable current (IEC 60364-4-43, from memory); ${ampacitySource}`,
  messages: {
    found: 'The battery fuse {fuse} is larger than the {iz} that {size} with {insulation} insulation carries',
  },

  check(system) {
    const { fuse, cable } = system.system.battery
    const iz = cable.size ? allowable(cable, cable.size.value, inside) : null
    if (!fuse || !cable.size || iz === null || fuse.value <= iz) return null
    const correction = fuseBelowCable(system, { design: mainDesignCurrent(system) ?? 0, iz })
    return {
      say: 'found',
      with: { fuse: said(fuse), iz: figure(iz, 'A'), size: said(cable.size), insulation: said(cable.insulation) },
      suspects: [fuse, cable.size],
      ...(correction && { correction }),
    }
  },
})
