import { short } from '../../rules/band.ts'
import { lostIn } from '../mismatch-in-words.ts'
import { unlikePlanes } from '../planes.ts'
import { placeOf } from '../rule.ts'
import type { ReviewRule } from '../rule.ts'

export const unlikePlanesInSeries: ReviewRule = {
  id: 'unlike-planes-in-series',
  severity: 'warning',
  reason: 'Panels in series that see different sun all work at the current of the one that sees least.',
  source: '10 deg is common practice, no source; loss from the curves of the panels, hour by hour',

  check(system) {
    return system.arrays.flatMap((array) =>
      unlikePlanes(system, array).flatMap(({ panels, other, angle }) => {
        const place = other.entry.surface ?? placeOf(array)
        if (angle <= 10.5 || !place) return []
        const loss = lostIn(system, array)
        const lost = loss ? `; ${loss.text}` : ''
        const where =
          panels === other
            ? `One string lies across ${panels.surface?.id?.text}, whose halves face ${short(angle)} deg apart`
            : `One string lies on ${panels.surface?.id?.text ?? 'no surface'} and ${other.surface?.id?.text ?? 'no surface'}, which face ${short(angle)} deg apart`
        return [{ message: `${where}${lost}; wire each side as a string of its own`, suspects: [place] as const }]
      }),
    )
  },
}
