import { figure } from '../../findings/message.ts'
import { placeOf } from '../rule.ts'
import { stringsOf } from '../strings.ts'
import { reviewRule } from '../rule.ts'

export const mixedPanelsInSeries = reviewRule({
  id: 'mixed-panels-in-series',
  severity: 'warning',
  reason: 'Panels in series share one current, that of the weakest.',
  source: '5 % is common practice, no source',
  messages: {
    found: 'Panels of {imp} and {imp2} are in series; the weaker sets the current, and of {all} about {power} are lost',
  },

  check(system) {
    return system.arrays.flatMap((array) => {
      for (const string of stringsOf(array)) {
        const known = string.flatMap((panels) =>
          panels.panel?.record.stc.imp
            ? [{ panels, imp: panels.panel.record.stc.imp.value, pmax: panels.panel.record.stc.pmax?.value ?? 0 }]
            : [],
        )
        const weak = known.reduce((a, b) => (b.imp < a.imp ? b : a), known[0]!)
        const strong = known.reduce((a, b) => (a.imp < b.imp ? b : a), known[0]!)
        const place = weak?.panels.entry.panel.id ?? placeOf(array)
        if (!weak || !place || strong.imp <= 1.05 * weak.imp) continue
        const all = known.reduce((sum, { pmax }) => sum + pmax, 0)
        const left = known.reduce((sum, { pmax, imp }) => sum + (pmax * weak.imp) / imp, 0)
        return [
          {
            say: 'found',
            with: {
              imp: figure(weak.imp, 'A'),
              imp2: figure(strong.imp, 'A'),
              all: figure(all, 'W'),
              power: figure(all - left, 'W'),
            },
            suspects: [place] as const,
          },
        ]
      }
      return []
    })
  },
})
