import type { LaidPanel } from '../../../server/src/review/packing/pack-panels.ts'
import type { SurfaceShape } from '../../../server/src/review/packing/surface.ts'

/** What is wrong with a layout, in words: written apart from the code that packs. Lengths in metres, of which 0.1 mm is let pass. */
export function faults(
  { length, width, gap, keepOut }: SurfaceShape,
  panel: readonly [number, number],
  places: readonly LaidPanel[],
): string[] {
  const sides = places.map(({ x_m: x, y_m: y, turned }) => {
    const [l, w] = turned ? [panel[1], panel[0]] : panel
    return { x, y, right: x + l, top: y + w }
  })
  const apart = (a: (typeof sides)[number], b: (typeof sides)[number], by: number) =>
    a.right + by <= b.x + 2e-4 || b.right + by <= a.x + 2e-4 || a.top + by <= b.y + 2e-4 || b.top + by <= a.y + 2e-4
  return sides.flatMap((one, i) => [
    ...(one.x < 0 || one.y < 0 || one.right > length + 2e-4 || one.top > width + 2e-4
      ? [`${i} is off the surface`]
      : []),
    ...keepOut.flatMap(({ x, y, length: l, width: w }, k) =>
      apart(one, { x, y, right: x + l, top: y + w }, 0) ? [] : [`${i} lies on keep-out ${k}`],
    ),
    ...sides.slice(0, i).flatMap((other, j) => (apart(one, other, gap) ? [] : [`${i} and ${j} are too close`])),
  ])
}
