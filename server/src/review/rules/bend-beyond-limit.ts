import { short } from '../../rules/band.ts'
import type { Measure } from '../../records/field.ts'
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
  source: 'the maker’s limit; a surface bends like an arc of its width',

  check(system) {
    return system.arrays.flatMap(({ panels }) =>
      panels.flatMap(({ entry, panel, surface }) => {
        const curve = surface?.curvature
        const place = entry.surface ?? curve
        const { bend, bend_radius: least } = panel?.record.limits ?? {}
        if (!curve || curve.value <= 0 || !place) return []
        const across = bendOf(panel?.record, surface)
        const radius = surface.size.width ? surface.size.width.value / ((curve.value * Math.PI) / 180) : null
        const what = `${surface.id?.text ?? 'The surface'} bends by ${said(curve)}`
        const name = panel?.record.name?.text ?? 'the panel'
        const found = (message: string, limit: Measure) => [
          { message, suspects: [place, curve] as const, ...elsewhere(panel, limit) },
        ]
        if (bend && bend.value < across) {
          const over = across < curve.value ? `, ${Number(across.toFixed(1))} deg over the panel` : ''
          return found(`${what}${over}, more than the ${said(bend)} that ${name} stands`, bend)
        }
        if (least && radius !== null && radius < least.value)
          return found(
            `${what}, a radius of ${short(radius)} m, less than the ${said(least)} that ${name} stands`,
            least,
          )
        return []
      }),
    )
  },
}
