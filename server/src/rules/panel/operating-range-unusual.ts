import type { PanelRule } from '../about.ts'
import { inside } from '../band.ts'

/** How high the low end, how low and how high the high end may lie [°C]. */
const usual = { flexible: [-20, 70, 125], rigid: [-20, 70, 125], folding: [0, 50, 125] } as const

export const operatingRangeUnusual: PanelRule = {
  id: 'operating-range-unusual',
  severity: 'information',
  reason:
    'Most panels are approved from -40 to 85 °C, folding ones for less; a narrower or reversed range is worth a look at the sheet.',
  source: 'common practice, no source',

  check({ limits: { operating_temperature: range }, construction }) {
    if (!range || range.quantity.upper === undefined) return null
    const [low, high] = [range.value, range.quantity.upper]
    if (low >= high)
      return { message: `The operating temperature ${range.text} runs backwards`, suspects: [range], severity: 'error' }
    const [lowest, least, most] = usual[construction?.value ?? 'rigid']
    if (low <= lowest && inside(high, [least, most])) return null
    return { message: `The operating temperature ${range.text} differs from the usual -40..85 °C`, suspects: [range] }
  },
}
