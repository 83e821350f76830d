import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { inside } from '../band.ts'
import { bestModule } from '../best-module.ts'
import { efficiencyOf } from '../efficiency-of.ts'

/**
 * Printed efficiency over that of the outline up to which it is usually that of the cells or of the aperture, which is a habit
 * and no slip. Margins, seams and eyelets of flexible panels take up to a third of the area. Common practice, no source.
 */
const cellsAlone = { flexible: 1.52, folding: 1.6, rigid: 1.15 } as const
const cellsAloneOfAny = 1.26
/** What cells have at most, over the best module of them: those of 27 % are in modules of 25.4 %. From memory. */
const cellOverModule = 1.07

export const efficiencyPrinted = panelRule({
  id: 'efficiency-printed',
  severity: 'warning',
  reason:
    'The printed efficiency repeats Pmax and the area in other words; where they disagree, one of them is mistyped.',
  source: 'definition of efficiency at standard test conditions, IEC 60904-3 (from memory)',
  messages: {
    theSheetMay: '; the sheet may count the cells alone',
    found: 'The printed efficiency {printed} disagrees with {computed} from Pmax {pmax}, {length} by {width}{hint}',
  },

  check(panel) {
    const { construction, cells } = panel
    const { efficiency: printed, pmax } = panel.stc
    const { length, width } = panel.size
    const computed = efficiencyOf(panel)
    if (!printed || !pmax || !length || !width || computed === undefined || computed <= 0) return null
    const ratio = printed.value / computed
    const rounding =
      printed.quantity.half +
      computed *
        (pmax.quantity.half / pmax.value + length.quantity.half / length.value + width.quantity.half / width.value)
    if (Math.abs(printed.value - computed) <= Math.max(rounding, 0.01 * computed)) return null
    const best = cellOverModule * bestModule[cells.technology?.value ?? 'other']
    const alone = construction ? cellsAlone[construction.value] : cellsAloneOfAny
    const most = printed.value > best ? 1 : alone
    const hint = inside(ratio, [1, most]) ? { say: 'theSheetMay' } : null
    // a third too low or half too high is another panel or a slip: common practice, no source
    const severity = inside(ratio, [0.97, most]) ? 'information' : inside(ratio, [0.67, 1.5]) ? 'warning' : 'error'
    return {
      say: 'found',
      with: { printed, computed: percent(computed), pmax, length, width, hint },
      suspects: [printed, pmax, length, width],
      severity,
    }
  },
})
