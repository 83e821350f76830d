import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { efficiencyOf } from '../efficiency-of.ts'
import { bestModule } from '../best-module.ts'
import { efficiencyImpossible } from './efficiency-impossible.ts'

export const efficiencyAboveRecord = panelRule({
  id: 'efficiency-above-record',
  severity: 'warning',
  reason:
    'A panel on sale does not beat the best laboratory module of its technology; the power or a side is mistyped.',
  source:
    'M. A. Green et al., "Solar cell efficiency tables", Progress in Photovoltaics, module table (2024 and 2025 versions; from memory where no report could be read)',
  messages: {
    phrase: '{technology} ',
    found:
      'Pmax {pmax} on {length} by {width} would be an efficiency of {efficiency}, above the best published {part}module ({share})',
  },

  check(panel, about) {
    const efficiency = efficiencyOf(panel)
    const { pmax } = panel.stc
    const { length, width } = panel.size
    const technology = panel.cells.technology?.value ?? 'other'
    if (efficiency === undefined || !pmax || !length || !width || efficiency <= bestModule[technology]) return null
    if (efficiencyImpossible.check(panel, about)) return null
    return {
      say: 'found',
      with: {
        pmax,
        length,
        width,
        efficiency: percent(efficiency),
        part: technology === 'other' ? null : { say: 'phrase', with: { technology } },
        share: percent(bestModule[technology]),
      },
      suspects: [pmax, length, width],
    }
  },
})
