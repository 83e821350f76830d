import type { GrowthCalibration } from '../model/calibration.ts'
import { index, valueAt, type Evidence } from '../evidence.ts'

export type Growing = keyof typeof growing

/** A rating of a model of another power class beside the rating that it grows with. */
export interface Rung {
  readonly name: Growing
  readonly growth: GrowthCalibration
  readonly value: number
  readonly beside: number
}

/**
 * What grows along with what from one class of a family to the next: Imp with Pmax, and each open or short value with the
 * one at maximum power, as the ratio of the two hardly differs within a family. Vmp is not among them, as it is Pmax over
 * Imp. How is calibrated, as a power about which two normals and the wide density of `grownLog` lie.
 */
export const growing = {
  imp: { field: index.imp, along: index.pmax },
  isc: { field: index.isc, along: index.imp },
  voc: { field: index.voc, along: index.vmp },
} as const

/** What a model of another class says of a rating; undefined where one of the two lacks it or what it grows with. */
export function rungOf(
  name: Growing,
  growth: GrowthCalibration,
  evidence: Evidence,
  other: Evidence,
): Rung | undefined {
  const { field, along } = growing[name]
  const [value, beside] = [valueAt(other, field), valueAt(other, along)]
  const isTold = [field, along].every((one) => valueAt(evidence, one) !== undefined)
  return value && beside && isTold ? { name, growth, value, beside } : undefined
}

/** How far a rating is from where the growth leads to, as logarithm. */
export function offOf({ name, growth, value, beside }: Rung, v: Float64Array): number {
  const { field, along } = growing[name]
  return Math.log(v[field]! / value) - growth.by * Math.log(v[along]! / beside)
}

/** The wider of the two spreads. */
export const spreadOf = ({ growth }: Rung): number => growth.spread[1]![1]

/** Width of the density that stands for what is known without a sibling; estimated. */
export const wide = 0.02

/** How much likelier it is that far from the growth than without knowing the other class, as logarithm. */
export function grownLog({ growth }: Rung, d: number): number {
  const alone = 1 / (Math.PI * wide * (1 + (d / wide) ** 2))
  let near = 0
  let far = 1
  for (const [share, sd] of growth.spread) {
    near += (share * Math.exp((-d * d) / (2 * sd * sd))) / (sd * Math.sqrt(2 * Math.PI))
    far -= share
  }
  return Math.log(Number.isFinite(d) ? far + near / alone : far)
}
