import { facingOf, type Facing } from './sun.ts'
import type { ResolvedArray, ResolvedPanels, ResolvedSystem } from './resolved.ts'
import { stringsOf } from './strings.ts'

/** Panels of one string that face apart. */
export interface Unlike {
  readonly panels: ResolvedPanels
  readonly other: ResolvedPanels
  /** Between the two directions that they face [deg]. */
  readonly angle: number
}

/** Strings whose panels lie on surfaces facing apart, or across a curve whose halves face apart; the worst of each kind. */
export function unlikePlanes(system: ResolvedSystem, array: ResolvedArray): readonly Unlike[] {
  const seen = new Map<string, Unlike>()
  for (const string of stringsOf(array)) {
    const kinds = [...new Set(string)]
    const base = kinds[0]
    if (!base || string.length < 2) continue
    const other = kinds.find((p) => p.surface !== base.surface)
    const [a, b] = other ? [facingOf(base, system), facingOf(other, system)] : halves(facingOf(base, system), base)
    const angle = between(a, b)
    const key = `${base.surface?.id?.value} ${other?.surface?.id?.value}`
    if (angle > 1 && !seen.has(key)) seen.set(key, { panels: base, other: other ?? base, angle })
  }
  return [...seen.values()]
}

/** The two halves of a curved surface, each as a plane, a quarter of the whole bend to its side. */
export function halves({ tilt, azimuth }: Facing, { surface }: ResolvedPanels): [Facing, Facing] {
  const quarter = (surface?.curvature?.value ?? 0) / 4
  return [
    { tilt: Math.abs(tilt + quarter), azimuth },
    tilt - quarter < 0 ? { tilt: quarter - tilt, azimuth: (azimuth + 180) % 360 } : { tilt: tilt - quarter, azimuth },
  ]
}

function between(a: Facing, b: Facing): number {
  const rad = Math.PI / 180
  const cosine =
    Math.cos(a.tilt * rad) * Math.cos(b.tilt * rad) +
    Math.sin(a.tilt * rad) * Math.sin(b.tilt * rad) * Math.cos((a.azimuth - b.azimuth) * rad)
  return Math.acos(Math.min(1, Math.max(-1, cosine))) / rad
}
