import { panelRule } from '../about.ts'
import { relative } from '../../values/inputs.ts'
import { isCrystalline } from '../../values/technology.ts'

export const coefficientsSwapped = panelRule({
  id: 'coefficients-swapped',
  severity: 'warning',
  reason:
    'In silicon, power falls faster with heat than voltage does, since the fill factor falls too; the other way round the two rows are exchanged.',
  source:
    'open module ratings of a public list, 2015 to 2022: true in all but 9 of 3 717 crystalline rows, the lowest ratio being 0.90',
  messages: {
    swapped: 'The Pmax coefficient {pmax} is smaller than that of Voc, {voc}',
    coefficientRowsExchanged: 'coefficient rows exchanged',
  },

  check(panel) {
    const { pmax, voc } = panel.temperature_coefficients
    const gamma = relative(pmax, panel.stc.pmax)
    const beta = relative(voc, panel.stc.voc)
    if (!pmax || !voc || gamma === undefined || beta === undefined || !isCrystalline(panel)) return null
    if (gamma >= 0 || beta >= 0 || gamma / beta >= 0.89 || gamma / beta < 0.4) return null
    return {
      say: 'swapped',
      with: { pmax, voc },
      suspects: [pmax, voc],
      correction: {
        field: pmax,
        text: voc.text,
        why: { say: 'coefficientRowsExchanged' },
        certainty: 'guess',
        also: [{ field: voc, text: pmax.text }],
      },
    }
  },
})
