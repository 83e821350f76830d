import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

export const powerPerWeightUnusual = panelRule({
  id: 'power-per-weight-unusual',
  severity: 'warning',
  reason: 'No panel gives this much, or this little, power for its weight.',
  source:
    'common practice, no source: about 10 to 25 W/kg with glass, 30 to 90 W/kg without, films of thin cells up to 1000 W/kg',
  messages: {
    unusual: '{pmax} from {weight} is {perWeight}; 10 to 25 W/kg is usual with glass, 30 to 90 without',
  },

  check(panel) {
    const { weight, stc } = panel
    if (!weight || !stc.pmax || weight.value <= 0) return null
    const perWeight = stc.pmax.value / weight.value
    if (inside(perWeight, [3, isCrystalline(panel) ? 160 : 1000])) return null
    return {
      say: 'unusual',
      with: { pmax: stc.pmax, weight, perWeight: figure(perWeight, 'W/kg') },
      suspects: [weight, stc.pmax],
    }
  },
})
