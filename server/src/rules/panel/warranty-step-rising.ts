import { panelRule } from '../about.ts'
import { inYears } from '../words.ts'

export const warrantyStepRising = panelRule({
  id: 'warranty-step-rising',
  severity: 'error',
  reason: 'A guarantee falls with the years; a later step that promises more is two steps exchanged.',
  source: 'common practice, no source',
  messages: {
    rising: 'After {years} {share} is guaranteed, more than {share2} after {years2}',
  },

  check({ warranty: { output } }) {
    const steps = output.flatMap((s) => (s.years && s.at_least ? [{ years: s.years, share: s.at_least }] : []))
    for (const early of steps)
      for (const late of steps)
        if (late.years.value > early.years.value && late.share.value > early.share.value)
          return {
            say: 'rising',
            with: { years: inYears(late.years), share: late.share, share2: early.share, years2: inYears(early.years) },
            suspects: [late.share, early.share],
          }
    return null
  },
})
