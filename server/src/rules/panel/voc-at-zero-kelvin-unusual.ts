import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { inside } from '../band.ts'
import { isCrystalline } from '../../values/technology.ts'

export const vocAtZeroKelvinUnusual = panelRule({
  id: 'voc-at-zero-kelvin-unusual',
  severity: 'warning',
  reason:
    'Extrapolated to absolute zero every silicon cell shows its band gap; if not, Voc, the cell count or the Voc coefficient is wrong.',
  source:
    'temperature law of the single-diode model (De Soto, Klein, Beckman 2006); open module ratings of a public list, 2015 to 2022: 0.89 to 1.61 V',
  messages: {
    unusual: 'The Voc coefficient {field} does not suit {voc} from {cells} cells',
  },

  check(panel) {
    const { voc } = panel.stc
    const { in_series: cells } = panel.cells
    const field = panel.temperature_coefficients.voc
    const beta = relative(field, voc)
    if (!voc || !cells || !field || beta === undefined || beta >= 0 || cells.value <= 0 || !isCrystalline(panel))
      return null
    const atZero = (voc.value / cells.value) * (1 - beta * 298.15)
    if (inside(atZero, [0.86, 1.75])) return null
    return {
      say: 'unusual',
      with: { voc, cells, field },
      suspects: [field, cells, voc],
    }
  },
})
