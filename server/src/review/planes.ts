import { energyOf, facingOf, type Facing } from './sun.ts'
import type { ResolvedArray, ResolvedPanels, ResolvedSystem } from './resolved.ts'
import { stringsOf } from './strings.ts'

/** Panels of one string that face apart. */
export interface Unlike {
  readonly panels: ResolvedPanels
  readonly other: ResolvedPanels
  /** Between the two directions that they face [deg]. */
  readonly angle: number
  /** Share of the year's energy lost by the string, as the panel with least sun sets its current; null without a climate. */
  readonly loss: number | null
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
    if (angle > 1 && !seen.has(key))
      seen.set(key, { panels: base, other: other ?? base, angle, loss: loss(system, base, a, other ?? base, b) })
  }
  return [...seen.values()]
}

/** Share of the year that an array loses by it. */
export function planeLoss(system: ResolvedSystem, array: ResolvedArray): number {
  const losses = unlikePlanes(system, array).map((one) => one.loss ?? 0)
  return losses.length > 0 ? Math.max(...losses) : 0
}

/** The two halves of a curved surface, each as a plane, a quarter of the whole bend to its side. */
function halves({ tilt, azimuth }: Facing, { surface }: ResolvedPanels): [Facing, Facing] {
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

function loss(system: ResolvedSystem, one: ResolvedPanels, a: Facing, other: ResolvedPanels, b: Facing): number | null {
  const [first, second] = [energyOf(system, one, null, a)?.hours, energyOf(system, other, null, b)?.hours]
  const [p, q] = [one.panel?.record.stc.pmax?.value, other.panel?.record.stc.pmax?.value]
  if (!first || !second || !p || !q) return null
  let least = 0
  let all = 0
  for (let h = 0; h < first.length; h++) {
    least += 2 * Math.min(first[h]! / p, second[h]! / q)
    all += first[h]! / p + second[h]! / q
  }
  return all > 0 ? 1 - least / all : null
}
