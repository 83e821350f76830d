import { figure } from '../../findings/message.ts'
import type { Panel } from '../../records/records.generated.ts'
import type { Surface } from '../resolved.ts'
import { elsewhere } from '../rule.ts'
import { said } from '../said.ts'
import { reviewRule } from '../rule.ts'

/** The bend that one panel takes: the surface's over its width, in the panel's longer side's share of it at most. */
function bendOf(panel: Panel | undefined, surface: Surface | undefined): number {
  const whole = surface?.curvature?.value ?? 0
  const [length, width] = [panel?.size.length?.value, surface?.size.width?.value]
  return length && width ? whole * Math.min(1, length / width) : whole
}

export const bendBeyondLimit = reviewRule({
  id: 'bend-beyond-limit',
  severity: 'error',
  reason: 'Bent further than permitted, cells crack, and the warranty is void.',
  source: 'the maker’s limit; a surface bends like an arc of its width',
  messages: {
    limit: '{surface} bends by {curve}{over}, more than the {limit} that {panel} is rated for',
    radius: '{surface} bends by {curve}, a radius of {radius}, less than the {limit} that {panel} is rated for',
    over: ', {across} over the panel',
    surface: 'The surface',
    panel: 'the panel',
  },

  check(system) {
    return system.arrays.flatMap(({ panels }) =>
      panels.flatMap(({ entry, panel, surface }) => {
        const curve = surface?.curvature
        const place = entry.surface ?? curve
        const { bend, bend_radius: least } = panel?.record.limits ?? {}
        if (!curve || curve.value <= 0 || !place) return []
        const across = bendOf(panel?.record, surface)
        const radius = surface.size.width ? surface.size.width.value / ((curve.value * Math.PI) / 180) : null
        const names = {
          surface: surface.id ?? { say: 'surface' },
          curve: said(curve),
          panel: panel?.record.name ?? { say: 'panel' },
        }
        const suspects = [place, curve] as const
        const angle = { value: across, unit: 'deg', decimals: 1 }
        const over = across < curve.value ? { say: 'over', with: { across: angle } } : null
        const tooFar = bend && bend.value < across
        const tooTight = !tooFar && least && radius !== null && radius < least.value
        return [
          ...(tooFar
            ? [
                {
                  say: 'limit',
                  with: { ...names, over, limit: said(bend) },
                  suspects,
                  ...elsewhere(panel, bend),
                } as const,
              ]
            : []),
          ...(tooTight
            ? [
                {
                  say: 'radius',
                  with: { ...names, radius: figure(radius, 'm'), limit: said(least) },
                  suspects,
                  ...elsewhere(panel, least),
                } as const,
              ]
            : []),
        ]
      }),
    )
  },
})
