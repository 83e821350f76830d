import type { PanelRule } from '../about.ts'
import { isCrystalline } from '../technology.ts'

export const bendLimitHigh: PanelRule = {
  id: 'bend-limit-high',
  severity: 'information',
  reason: 'Some sheets print arcs of 240° and more, though crystalline cells crack well before; a radius says more.',
  source: 'common practice, no source: up to about 30 degrees over the length',

  check(panel) {
    const { bend } = panel.limits
    const most = isCrystalline(panel) ? 60 : 360
    if (!bend || bend.value <= most) return null
    return { message: `The bend limit ${bend.text} is above ${most} degrees`, suspects: [bend] }
  },
}
