import type { PanelRule } from '../about.ts'
import { inside, short } from '../band.ts'
import { isCrystalline } from '../technology.ts'

export const powerPerWeightUnusual: PanelRule = {
  id: 'power-per-weight-unusual',
  severity: 'warning',
  reason: 'No panel gives this much, or this little, power for its weight.',
  source:
    'common practice, no source: about 10 to 25 W/kg with glass, 30 to 90 W/kg without, films of thin cells up to 1000 W/kg',

  check(panel) {
    const { weight, stc } = panel
    if (!weight || !stc.pmax || weight.value <= 0) return null
    const perWeight = stc.pmax.value / weight.value
    if (inside(perWeight, [3, isCrystalline(panel) ? 160 : 1000])) return null
    return {
      message: `Pmax ${stc.pmax.text} from ${weight.text} is ${short(perWeight)} W/kg`,
      suspects: [weight, stc.pmax],
    }
  },
}
