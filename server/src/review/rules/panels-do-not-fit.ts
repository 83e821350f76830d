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
        const name = panels.panel?.record.name?.text ?? 'these panels'
        const on = `${surface.id?.text ?? 'the surface'}${surface.keep_out.length > 0 ? ' around its keep-outs' : ''}`
        const many = most === 0 ? `No ${name} fits` : `${wanted} x ${name} do not fit`
        const fits = most === 0 ? '' : `; at most ${most} ${most === 1 ? 'does' : 'do'}`
        return [
          {
            message: proven
              ? `${many} on ${on}, either way round${fits}`
              : `No layout was found for ${wanted} x ${name} on ${on} beside the others; ${most} fit`,
            suspects: [place] as const,
            severity: proven ? ('error' as const) : ('warning' as const),
          },
        ]
      }),
    )
  },
}
