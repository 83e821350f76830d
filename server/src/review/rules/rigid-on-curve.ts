import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

export const rigidOnCurve = reviewRule({
  id: 'rigid-on-curve',
  severity: 'warning',
  reason: 'A flat rigid panel on a curved surface rests on two edges, rocks and breaks.',
  source: '5 deg is common practice, no source',
  messages: {
    thePanel: 'The panel',
    theSurface: 'the surface',
    found: '{name} is rigid and {id} bends by {curve}; put it on standoffs',
  },

  check(system) {
    return system.arrays.flatMap(({ panels }) =>
      panels.flatMap(({ entry, panel, surface }) => {
        const curve = surface?.curvature
        const place = entry.surface ?? curve
        const mounting = surface?.mounting?.value
        if (panel?.record.construction?.value !== 'rigid' || !curve || curve.value <= 5 || !place) return []
        if (mounting === 'standoff' || mounting === 'open rack') return []
        return [
          {
            say: 'found',
            with: {
              name: panel.record.name ?? { say: 'thePanel' },
              id: surface?.id ?? { say: 'theSurface' },
              curve: said(curve),
            },
            suspects: [place, curve] as const,
          },
        ]
      }),
    )
  },
})
