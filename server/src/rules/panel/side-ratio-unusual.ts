import { figure } from '../../findings/message.ts'
import { panelRule } from '../about.ts'
import { isCrystalline } from '../../values/technology.ts'

export const sideRatioUnusual = panelRule({
  id: 'side-ratio-unusual',
  severity: 'information',
  reason: 'A panel much longer than wide is a strip, or one side is in another unit or is the thickness.',
  source: 'open module ratings of a public list, 2015 to 2022: 99 % of crystalline modules below 2.2, the highest 3.7',
  messages: {
    unusual: 'The length {length} is {value} times the width {width}',
  },

  check(panel) {
    const { length, width } = panel.size
    if (
      !length ||
      !width ||
      width.value <= 0 ||
      length.value / width.value <= (isCrystalline(panel) && panel.construction?.value !== 'folding' ? 4 : 12.5)
    )
      return null
    return {
      say: 'unusual',
      with: { length, value: figure(length.value / width.value), width },
      suspects: [length, width],
    }
  },
})
