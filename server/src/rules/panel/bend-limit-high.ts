import { panelRule } from '../about.ts'
import { isCrystalline } from '../../values/technology.ts'

export const bendLimitHigh = panelRule({
  id: 'bend-limit-high',
  severity: 'information',
  reason: 'Some sheets print arcs of 240° and more, though crystalline cells crack well before; a radius says more.',
  source: 'common practice, no source: up to about 30 degrees over the length',
  messages: {
    high: 'The bend limit {bend} is above {most} degrees',
  },

  check(panel) {
    const { bend } = panel.limits
    const most = isCrystalline(panel) ? 60 : 360
    if (!bend || bend.value <= most) return null
    return { say: 'high', with: { bend, most }, suspects: [bend] }
  },
})
