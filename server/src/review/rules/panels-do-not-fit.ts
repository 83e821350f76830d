import { layOut } from '../fit.ts'
import { reviewRule } from '../rule.ts'

export const panelsDoNotFit = reviewRule({
  id: 'panels-do-not-fit',
  severity: 'error',
  reason: 'What does not fit the deck cannot be delivered.',
  source: 'geometry: every layout with edges parallel to the surface, both ways round',
  messages: {
    noFits: 'No {name} fits',
    xDoNot: '{wanted} x {name} do not fit',
    theSurface: 'the surface',
    aroundItsKeep: ' around its keep-outs',
    phrase: '{id}{part}',
    does: 'does',
    do: 'do',
    atMost: '; at most {most} {part}',
    onEitherWay: '{many} on {on}, either way round{fits}',
    noLayoutWas: 'No layout was found for {wanted} x {name} on {on} beside the others; {most} fit',
  },

  check(system) {
    return system.system.surfaces.flatMap((surface) =>
      layOut(system, surface).flatMap(({ panels, laid, wanted, proven }) => {
        const place = panels.entry.count ?? panels.entry.surface
        if (wanted <= laid.length || !place) return []
        const most = laid.length
        const name = panels.panel?.record.name?.text ?? 'these panels'
        const on = {
          say: 'phrase',
          with: {
            id: surface.id ?? { say: 'theSurface' },
            part: surface.keep_out.length > 0 ? { say: 'aroundItsKeep' } : null,
          },
        }
        const many = most === 0 ? { say: 'noFits', with: { name } } : { say: 'xDoNot', with: { wanted, name } }
        const fits =
          most === 0 ? null : { say: 'atMost', with: { most, part: most === 1 ? { say: 'does' } : { say: 'do' } } }
        return [
          {
            ...(proven
              ? { say: 'onEitherWay', with: { many, on, fits } }
              : { say: 'noLayoutWas', with: { wanted, name, on, most } }),
            suspects: [place],
            severity: proven ? ('error' as const) : ('warning' as const),
          },
        ]
      }),
    )
  },
})
