import { panelRule } from '../about.ts'
import { isCrystalline } from '../../values/technology.ts'

export const bendLimitHigh = panelRule({
  id: 'bend-limit-high',
  severity: 'information',
  reason: 'Some sheets print arcs of 240° and more, though crystalline cells crack well before; a radius says more.',
  source: 'common practice, no source: up to about 30 degrees over the length',
  messages: {
    silicon: 'Bend limit {bend}: some sheets print such arcs, but silicon cells crack well before; ask for a radius',
    aboveTurn: 'Bend limit {bend}: more than a full turn; ask for a radius',
  },

  check(panel) {
    const { bend, bend_radius: radius } = panel.limits
    const silicon = isCrystalline(panel)
    if (!bend || radius || bend.value <= (silicon ? 60 : 360)) return null
    return { say: silicon ? 'silicon' : 'aboveTurn', with: { bend }, suspects: [bend] }
  },
})
