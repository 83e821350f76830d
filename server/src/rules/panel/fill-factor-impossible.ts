import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { greenFillFactor } from '../../physics/fill-factor.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

/** Thermal voltage at 25 °C times the ideality factor of the Auger limit [V]. */
const auger = (0.025693 * 2) / 3

export const fillFactorImpossible = panelRule({
  id: 'fill-factor-impossible',
  severity: 'error',
  reason: 'Even a diode without any resistance cannot fill more of the rectangle of Voc and Isc.',
  source:
    'M. A. Green, Solid-State Electronics 24 (1981) 788 (from memory), with an ideality factor of 2/3, the Auger limit of silicon',
  messages: {
    impossible:
      'Vmp {vmp} and Imp {imp} against Voc {voc} and Isc {isc} give a fill factor of {ff}, above the limit of {limit}',
  },

  check(panel) {
    const { vmp, imp, voc, isc } = panel.stc
    const cells = panel.cells.in_series
    if (!vmp || !imp || !voc || !isc || vmp.value >= voc.value || imp.value >= isc.value || vmp.value <= 0) return null
    const ff = (vmp.value * imp.value) / (voc.value * isc.value)
    const perCell = cells ? voc.value / cells.value : undefined
    const limit =
      isCrystalline(panel) && perCell !== undefined && inside(perCell, [0.4, 0.9])
        ? greenFillFactor(perCell / auger)
        : 0.91
    if (ff <= limit) return null
    return {
      say: 'impossible',
      with: { vmp, imp, voc, isc, ff: percent(ff), limit: percent(limit) },
      suspects: [vmp, imp, voc, isc],
    }
  },
})
