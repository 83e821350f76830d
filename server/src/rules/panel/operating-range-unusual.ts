import { panelRule } from '../about.ts'
import { inside } from '../band.ts'

/** How high the low end, how low and how high the high end may lie [°C]. */
const usual = { flexible: [-20, 70, 125], rigid: [-20, 70, 125], folding: [0, 50, 125] } as const

export const operatingRangeUnusual = panelRule({
  id: 'operating-range-unusual',
  severity: 'information',
  reason:
    'Most panels are approved from -40 to 85 °C, folding ones for less; a narrower or reversed range is worth a look at the sheet.',
  source: 'common practice, no source',
  messages: {
    theOperatingTemperature: 'The operating temperature {range} runs backwards',
    theOperatingTemperature2: 'The operating temperature {range} differs from the usual -40..85 °C',
  },

  check({ limits: { operating_temperature: range }, construction }) {
    if (!range || range.quantity.upper === undefined) return null
    const [low, high] = [range.value, range.quantity.upper]
    if (low >= high) return { say: 'theOperatingTemperature', with: { range }, suspects: [range], severity: 'error' }
    const [lowest, least, most] = usual[construction?.value ?? 'rigid']
    if (low <= lowest && inside(high, [least, most])) return null
    return { say: 'theOperatingTemperature2', with: { range }, suspects: [range] }
  },
})
