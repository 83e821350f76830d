import { short } from '../../rules/band.ts'
import { lostIn } from '../mismatch-in-words.ts'
import { placeOf } from '../rule.ts'
import { stringsOf } from '../strings.ts'
import type { ReviewRule } from '../rule.ts'

export const mixedPanelsInSeries: ReviewRule = {
  id: 'mixed-panels-in-series',
  severity: 'warning',
  reason: 'Panels in series share one current: the weaker one limits it, or is bridged by its bypass diodes.',
  source: '5 % is common practice, no source; loss from the curves of the panels, hour by hour',

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
            message: `Panels of ${short(weak.imp)} A and ${short(strong.imp)} A are in series${lost ? `: ${lost.text}` : ', and the weaker limits the current'}`,
            suspects: [place] as const,
            ...(lost?.proposal && { correction: lost.proposal }),
          },
        ]
      }
      return []
    })
  },
}
