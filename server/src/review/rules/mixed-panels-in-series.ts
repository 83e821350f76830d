import { short } from '../../rules/band.ts'
import { placeOf } from '../rule.ts'
import { stringsOf } from '../strings.ts'
import type { ReviewRule } from '../rule.ts'

export const mixedPanelsInSeries: ReviewRule = {
  id: 'mixed-panels-in-series',
  severity: 'warning',
  reason: 'Panels in series share one current, that of the weakest.',
  source: '5 % is common practice, no source',

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
            message: `Panels of ${short(weak.imp)} A and ${short(strong.imp)} A are in series; the weaker sets the current, and of ${short(all)} W about ${short(all - left)} W are lost`,
            suspects: [place] as const,
          },
        ]
      }
      return []
    })
  },
}
