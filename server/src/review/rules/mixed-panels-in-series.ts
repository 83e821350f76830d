import { figure } from '../../findings/message.ts'
import { lostIn } from '../mismatch-in-words.ts'
import { placeOf } from '../rule.ts'
import { stringsOf } from '../strings.ts'
import { reviewRule } from '../rule.ts'

export const mixedPanelsInSeries = reviewRule({
  id: 'mixed-panels-in-series',
  severity: 'warning',
  reason: 'Panels in series share one current: the weaker one limits it, or is bridged by its bypass diodes.',
  source: '5 % is common practice, no source; loss from the curves of the panels, hour by hour',
  messages: {
    loses: '; {lost}',
    andTheWeaker: ', and the weaker limits the current',
    found: 'Panels of {imp} and {imp2} are in series{part}',
  },

  check(system) {
    return system.arrays.flatMap((array) => {
      for (const string of stringsOf(array)) {
        const known = string.flatMap((panels) =>
          panels.panel?.record.stc.imp ? [{ panels, imp: panels.panel.record.stc.imp.value }] : [],
        )
        const weak = known.reduce((a, b) => (b.imp < a.imp ? b : a), known[0]!)
        const strong = known.reduce((a, b) => (a.imp < b.imp ? b : a), known[0]!)
        const place = weak?.panels.entry.panel.id ?? placeOf(array)
        if (!weak || !place || strong.imp <= 1.05 * weak.imp) continue
        const lost = lostIn(system, array)
        return [
          {
            say: 'found',
            with: {
              imp: figure(weak.imp, 'A'),
              imp2: figure(strong.imp, 'A'),
              part: lost ? { say: 'loses', with: { lost: lost.said } } : { say: 'andTheWeaker' },
            },
            suspects: [place],
            ...(lost?.proposal && { correction: lost.proposal }),
          },
        ]
      }
      return []
    })
  },
})
