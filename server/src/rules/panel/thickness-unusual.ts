import { panelRule } from '../about.ts'
import { usualFor } from '../band.ts'

/** mm */
const usual = { flexible: [0.2, 8], rigid: [1.5, 60], folding: [2, 80] } as const

export const thicknessUnusual = panelRule({
  id: 'thickness-unusual',
  severity: 'information',
  reason: 'A thickness outside the usual band is another unit, or includes the junction box.',
  source: 'common practice, no source',
  messages: {
    unusual: 'The thickness {thickness} is outside {low} to {high} that is usual for {panel}',
  },

  check({ size: { thickness }, construction }) {
    if (!thickness || thickness.value <= 0) return null
    const { low, high, panel } = usualFor(usual, { construction })
    const mm = thickness.value * 1000
    if (low <= mm && mm <= high) return null
    return {
      say: 'unusual',
      with: { thickness, low: { value: low, unit: 'mm', bare: true }, high: { value: high, unit: 'mm' }, panel },
      suspects: [thickness],
    }
  },
})
