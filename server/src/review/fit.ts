import { packPanels, type LaidPanel } from './packing/pack-panels.ts'
import type { SurfaceShape } from './packing/surface.ts'
import { countOf } from './strings.ts'
import type { ResolvedPanels, ResolvedSystem, Surface } from './resolved.ts'

/** Where the panels of one entry of an array come to lie on a surface. */
export interface Laid {
  readonly panels: ResolvedPanels
  /** Of the entry. */
  readonly pointer: string
  readonly laid: readonly LaidPanel[]
  readonly wanted: number
  /** Whether it is certain that no more fit. */
  readonly proven: boolean
}

/** Outline of a surface; null where it has no size. */
export function shapeOf({ size, keep_out: keepOut, gap, walkway }: Surface): SurfaceShape | null {
  if (!size.length || !size.width) return null
  const [length, width] = [size.length.value, size.width.value]
  const strip = Math.max(0, walkway.width?.value ?? 0)
  return {
    length,
    width,
    gap: Math.max(0, gap?.value ?? 0),
    keepOut: [
      ...keepOut.flatMap(({ x, y, length, width }) =>
        x && y && length && width ? [{ x: x.value, y: y.value, length: length.value, width: width.value }] : [],
      ),
      ...(strip > 0 && walkway.side
        ? [{ x: 0, y: 0, ...(walkway.side.value === 'length' ? { length, width: strip } : { length: strip, width }) }]
        : []),
    ],
  }
}

/** Lays the panels of all arrays on a surface: the largest first, the next around it. */
export function layOut(system: ResolvedSystem, surface: Surface): readonly Laid[] {
  const shape = shapeOf(surface)
  if (!shape) return []
  const all = system.arrays.flatMap(({ panels: entries }, i) =>
    entries
      .map((panels, j) => ({ panels, pointer: `/arrays/${i}/panels/${j}` }))
      .filter(({ panels }) => panels.surface === surface && sizeOf(panels)),
  )
  const area = ({ panels }: { readonly panels: ResolvedPanels }) => sizeOf(panels)!.length * sizeOf(panels)!.width
  let { keepOut } = shape
  let taken = false
  return all
    .sort((a, b) => area(b) - area(a))
    .map(({ panels, pointer }) => {
      const size = sizeOf(panels)!
      const wanted = countOf(panels)
      const { laid, proven } = packPanels({ ...shape, keepOut }, size, wanted)
      const covered = laid.map(({ x_m: x, y_m: y, turned }) => ({
        x: x - shape.gap,
        y: y - shape.gap,
        length: (turned ? size.width : size.length) + 2 * shape.gap,
        width: (turned ? size.length : size.width) + 2 * shape.gap,
      }))
      keepOut = [...keepOut, ...covered]
      const result = { panels, pointer, laid, wanted, proven: proven && !taken }
      taken ||= laid.length > 0
      return result
    })
}

function sizeOf({ panel }: ResolvedPanels): { readonly length: number; readonly width: number } | null {
  const { length, width } = panel?.record.size ?? {}
  return length && width && length.value > 0 && width.value > 0 ? { length: length.value, width: width.value } : null
}
