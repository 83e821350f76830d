import type { PanelRule } from '../about.ts'
import { inside } from '../band.ts'

export const operatingRange: PanelRule = {
  id: 'operating-range',
  severity: 'information',
  reason: 'Most panels are approved from -40 to 85 °C; a narrower or reversed range is worth a look at the sheet.',
  source: 'common practice, no source',

  check({ limits: { operating_temperature: range } }) {
    if (!range || range.quantity.upper === undefined) return null
    const [low, high] = [range.value, range.quantity.upper]
    if (low < high && low <= -20 && inside(high, [70, 125])) return null
    return {
      message: `The operating temperature ${range.text} differs from the usual -40..85 °C`,
      suspects: [range],
      severity: low < high ? 'information' : 'error',
    }
  },
}
