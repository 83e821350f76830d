import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

export const rigidOnCurve: ReviewRule = {
  id: 'rigid-on-curve',
  severity: 'warning',
  reason: 'A flat rigid panel on a curved surface rests on two edges, rocks and breaks.',
  source: '5 deg is common practice, no source',

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
            message: `${panel.record.name?.text ?? 'The panel'} is rigid and ${surface?.id?.text ?? 'the surface'} bends by ${said(curve)}; put it on standoffs`,
            suspects: [place, curve] as const,
          },
        ]
      }),
    )
  },
}
