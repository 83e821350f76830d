import type { Panel } from '../../records/records.generated.ts'
import type { Surface } from '../resolved.ts'
import { elsewhere } from '../rule.ts'
import { said } from '../said.ts'
import type { ReviewRule } from '../rule.ts'

/** The bend that one panel takes: the surface's over its width, in the panel's longer side's share of it at most. */
function bendOf(panel: Panel | undefined, surface: Surface | undefined): number {
  const whole = surface?.curvature?.value ?? 0
  const [length, width] = [panel?.size.length?.value, surface?.size.width?.value]
  return length && width ? whole * Math.min(1, length / width) : whole
}

export const bendBeyondLimit: ReviewRule = {
  id: 'bend-beyond-limit',
  severity: 'error',
  reason: 'Bent further than permitted, cells crack, and the warranty is void.',
  source: 'the maker’s limit',

  check(system) {
    return system.arrays.flatMap(({ panels }) =>
      panels.flatMap(({ entry, panel, surface }) => {
        const [bend, curve] = [panel?.record.limits.bend, surface?.curvature]
        const place = entry.surface ?? curve
        const across = bendOf(panel?.record, surface)
        if (!bend || !curve || !place || across <= bend.value) return []
        return [
          {
            message: `${surface?.id?.text ?? 'The surface'} bends by ${said(curve)}${across < curve.value ? `, ${Number(across.toFixed(1))} deg over the panel` : ''}, more than the ${said(bend)} that ${panel?.record.name?.text ?? 'the panel'} stands`,
            suspects: [place, curve] as const,
            ...elsewhere(panel, bend),
          },
        ]
      }),
    )
  },
}
