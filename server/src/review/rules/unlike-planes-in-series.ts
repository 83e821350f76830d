import { figure } from '../../findings/message.ts'
import { lostIn } from '../mismatch-in-words.ts'
import { unlikePlanes } from '../planes.ts'
import { placeOf } from '../rule.ts'
import { reviewRule } from '../rule.ts'

export const unlikePlanesInSeries = reviewRule({
  id: 'unlike-planes-in-series',
  severity: 'warning',
  reason: 'Panels in series that see different sun all work at the current of the one that sees least.',
  source: '10 deg is common practice, no source; loss from the curves of the panels, hour by hour',
  messages: {
    acrossOneSurface: 'One string is across {id}, whose halves face {angle} apart',
    noSurface: 'no surface',
    onTwoSurfaces: 'One string is on {id} and {id2}, which face {angle} apart',
    loses: '; {loss}',
    found: '{where}{lost}; make each side a string',
  },

  check(system) {
    return system.arrays.flatMap((array) =>
      unlikePlanes(system, array).flatMap(({ panels, other, angle }) => {
        const place = other.entry.surface ?? placeOf(array)
        if (angle <= 10.5 || !place) return []
        const loss = lostIn(system, array)
        const lost = loss ? { say: 'loses', with: { loss: loss.said } } : null
        const where =
          panels === other
            ? { say: 'acrossOneSurface', with: { id: panels.surface?.id, angle: figure(angle, 'deg') } }
            : {
                say: 'onTwoSurfaces',
                with: {
                  id: panels.surface?.id ?? { say: 'noSurface' },
                  id2: other.surface?.id ?? { say: 'noSurface' },
                  angle: figure(angle, 'deg'),
                },
              }
        return [{ say: 'found', with: { where, lost }, suspects: [place] as const }]
      }),
    )
  },
})
