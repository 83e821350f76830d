import type { PanelRule } from '../about.ts'
import { inside, short } from '../band.ts'
import { isCrystalline } from '../technology.ts'

const crystalline = [0.7, 0.83] as const
const others = [0.52, 0.82] as const

export const fillFactorUnusual: PanelRule = {
  id: 'fill-factor-unusual',
  severity: 'information',
  reason: 'The fill factor sums up all losses inside a panel; outside its band one of the four ratings is doubtful.',
  source:
    'open module ratings of a public list, 2015 to 2022: 1st to 99th percentile of crystalline 0.705 to 0.810, thin film 0.53 to 0.79',

  check(panel) {
    const { vmp, imp, voc, isc } = panel.stc
    if (!vmp || !imp || !voc || !isc || vmp.value >= voc.value || imp.value >= isc.value) return null
    const ff = (vmp.value * imp.value) / (voc.value * isc.value)
    const usual = isCrystalline(panel) ? crystalline : others
    if (inside(ff, usual)) return null
    return {
      message: `Vmp ${vmp.text} and Imp ${imp.text} against Voc ${voc.text} and Isc ${isc.text} give a fill factor of ${short(ff)}, where ${usual[0]} to ${usual[1]} is usual`,
      suspects: [vmp, imp, voc, isc],
    }
  },
}
