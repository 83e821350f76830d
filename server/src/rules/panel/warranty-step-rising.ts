import type { PanelRule } from '../about.ts'
import { inYears } from '../words.ts'

export const warrantyStepRising: PanelRule = {
  id: 'warranty-step-rising',
  severity: 'error',
  reason: 'A guarantee falls with the years; a later step that promises more is two steps exchanged.',
  source: 'common practice, no source',

  check({ warranty: { output } }) {
    const steps = output.flatMap((s) => (s.years && s.at_least ? [{ years: s.years, share: s.at_least }] : []))
    for (const early of steps)
      for (const late of steps)
        if (late.years.value > early.years.value && late.share.value > early.share.value)
          return {
            message: `After ${inYears(late.years)} ${late.share.text} is guaranteed, more than ${early.share.text} after ${inYears(early.years)}`,
            suspects: [late.share, early.share],
          }
    return null
  },
}
