import { layOut } from '../fit.ts'
import type { ReviewRule } from '../rule.ts'

export const panelsDoNotFit: ReviewRule = {
  id: 'panels-do-not-fit',
  severity: 'error',
  reason: 'What does not fit the deck cannot be delivered.',
  source: 'geometry: every layout with edges parallel to the surface, both ways round',

  check(system) {
    return system.system.surfaces.flatMap((surface) =>
      layOut(system, surface).flatMap(({ panels, places, wanted, proven }) => {
        const place = panels.entry.count ?? panels.entry.surface
        if (wanted <= places.length || !place) return []
        const most = places.length
        return [
          {
            message: proven
              ? `${wanted} of ${panels.panel?.record.name?.text ?? 'these panels'} do not fit ${surface.id?.text ?? 'the surface'} around its keep-outs; at most ${most} do`
              : `No layout was found for ${wanted} of ${panels.panel?.record.name?.text ?? 'these panels'} on ${surface.id?.text ?? 'the surface'} beside the others; ${most} fit`,
            suspects: [place] as const,
            severity: proven ? ('error' as const) : ('warning' as const),
          },
        ]
      }),
    )
  },
}
