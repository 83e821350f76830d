import { layOut, shapeOf, type Laid } from '../fit.ts'
import type { ResolvedSystem, Surface } from '../resolved.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

/** A surface with what lies on it, from one corner [m]; x runs along its length. */
export interface SurfacePlan {
  readonly id: string
  readonly pointer: string
  readonly length_m: number
  readonly width_m: number
  readonly mounting: string | null
  readonly keep_out: readonly PlannedArea[]
  readonly panels: readonly PlannedArea[]
  /** How many panels found no place. */
  readonly unplaced: number
}

export interface PlannedArea {
  readonly name: string
  readonly pointer: string
  readonly x_m: number
  readonly y_m: number
  readonly length_m: number
  readonly width_m: number
}

/** A plan of each surface that has a size. */
export function plansOf(system: ResolvedSystem, bundle?: Bundle): readonly SurfacePlan[] {
  return system.system.surfaces.flatMap((surface, i) => {
    const shape = shapeOf(surface)
    if (!shape || shape.length <= 0 || shape.width <= 0) return []
    const layout = layOut(system, surface)
    const pointer = `/surfaces/${i}`
    return [
      {
        id: surface.id?.value ?? sayIn(bundle)`surface ${i + 1}`,
        pointer,
        length_m: shape.length,
        width_m: shape.width,
        mounting: surface.mounting?.value ?? null,
        keep_out: keptOut(surface, pointer, shape, bundle),
        panels: layout.flatMap((one) => panelsOf(one, bundle)),
        unplaced: layout.reduce((sum, { wanted, laid }) => sum + wanted - laid.length, 0),
      },
    ]
  })
}

function keptOut(
  surface: Surface,
  pointer: string,
  { length, width }: { readonly length: number; readonly width: number },
  bundle: Bundle | undefined,
): readonly PlannedArea[] {
  const say = sayIn(bundle)
  const { keep_out: areas, walkway } = surface
  const strip = walkway.width?.value ?? 0
  const along = walkway.side?.value === 'length'
  return [
    ...areas.flatMap(({ name, x, y, length: l, width: w }, i) =>
      x && y && l && w
        ? [
            {
              name: name?.text ?? say`keep out`,
              pointer: `${pointer}/keep_out/${i}`,
              x_m: x.value,
              y_m: y.value,
              length_m: l.value,
              width_m: w.value,
            },
          ]
        : [],
    ),
    ...(strip > 0 && walkway.side
      ? [
          {
            name: say`walkway`,
            pointer: `${pointer}/walkway`,
            x_m: 0,
            y_m: 0,
            length_m: along ? length : strip,
            width_m: along ? strip : width,
          },
        ]
      : []),
  ]
}

function panelsOf({ panels, pointer, laid }: Laid, bundle: Bundle | undefined): readonly PlannedArea[] {
  const { length, width } = panels.panel!.record.size
  return laid.map(({ x_m, y_m, turned }) => ({
    name: panels.panel!.record.name?.text ?? panels.entry.panel.id?.text ?? sayIn(bundle)`panel`,
    pointer,
    x_m,
    y_m,
    length_m: (turned ? width : length)!.value,
    width_m: (turned ? length : width)!.value,
  }))
}
