import { percent } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { efficiencyOf } from '../efficiency-of.ts'
import { isCrystalline } from '../../values/technology.ts'
import { shockleyQueisser, siliconLimit, tandemLimit } from '../../physics/limits.ts'

export const efficiencyImpossible = panelRule({
  id: 'efficiency-impossible',
  severity: 'error',
  reason:
    'No cell of one junction can turn more than a third of sunlight into power, and silicon no more than 29.4 %, whoever makes it.',
  source:
    'W. Shockley, H. J. Queisser, J. Appl. Phys. 32 (1961) 510; S. Rühle, "Tabulated values of the Shockley-Queisser limit", Solar Energy 130 (2016) 139: 33.7 % at 1.34 eV under AM1.5G (33.2 % where the rear face shines too); silicon 29.4 %: A. Richter, M. Hermle, S. W. Glunz, IEEE J. Photovoltaics 3 (2013) 1184 (from memory)',
  messages: {
    beyondAll: '{pmax} cannot come from {length} by {width}',
    impossible: '{pmax} cannot come from {length} by {width}: {efficiency} is above the limit of {limit}',
  },

  check(panel) {
    const efficiency = efficiencyOf(panel)
    const { pmax } = panel.stc
    const { length, width } = panel.size
    const limit =
      panel.cells.technology?.value === 'tandem' ? tandemLimit : isCrystalline(panel) ? siliconLimit : shockleyQueisser
    if (efficiency === undefined || !pmax || !length || !width || efficiency <= limit) return null
    const suspects = [pmax, length, width] as const
    // more than all of the light: a number of thousands of per cent helps nobody
    if (efficiency > 1) return { say: 'beyondAll', with: { pmax, length, width }, suspects }
    return {
      say: 'impossible',
      with: { pmax, length, width, efficiency: percent(efficiency), limit: percent(limit) },
      suspects,
    }
  },
})
