import { panelRule } from '../about.ts'
import { isCrystalline } from '../technology.ts'

export const bendLimitHigh = panelRule({
  id: 'bend-limit-high',
  severity: 'information',
  reason: 'Crystalline cells crack long before; a limit this large is a radius or another unit.',
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
