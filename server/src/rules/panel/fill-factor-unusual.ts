import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

const crystalline = [0.7, 0.83] as const
const others = [0.52, 0.82] as const

export const fillFactorUnusual = panelRule({
  id: 'fill-factor-unusual',
  severity: 'information',
  reason: 'The fill factor sums up all losses inside a panel; outside its band one of the four ratings is doubtful.',
  source:
    'open module ratings of a public list, 2015 to 2022: 1st to 99th percentile of crystalline 0.705 to 0.810, thin film 0.53 to 0.79',
  messages: {
    unusual:
      'Vmp {vmp} and Imp {imp} against Voc {voc} and Isc {isc} give a fill factor of {ff}, where {low} to {high} is usual',
  },

  check(panel) {
    const { vmp, imp, voc, isc } = panel.stc
    if (!vmp || !imp || !voc || !isc || vmp.value >= voc.value || imp.value >= isc.value) return null
    const ff = (vmp.value * imp.value) / (voc.value * isc.value)
    const usual = isCrystalline(panel) ? crystalline : others
    if (inside(ff, usual)) return null
    return {
      say: 'unusual',
      with: { vmp, imp, voc, isc, ff: percent(ff), low: percent(usual[0]), high: percent(usual[1]) },
      suspects: [vmp, imp, voc, isc],
    }
  },
})
