import type { GroupCalibration } from './calibration.ts'
import { coordinates, features, usable } from './features.ts'
import { invert } from './matrix.ts'

/**
 * The joint distribution of a record's features: a multivariate t, mixed with records in which one coordinate is honestly
 * odd (a wide t by itself, beside the others as usual). So a true record that is odd in one place costs little.
 */
export interface Core {
  /** Features as factors of the coordinates. */
  readonly rows: readonly Float64Array[]
  readonly mean: Float64Array
  readonly precision: readonly Float64Array[]
  readonly halfLogDet: number
  /** Per coordinate: its features' factors, and the conditional precision given all else; 0 where it takes no part. */
  readonly tightness: Float64Array
  readonly logRegular: number
  readonly logOdd: Float64Array
}

/** The part of a calibration that the core is made of. */
export type Joint = Pick<GroupCalibration, 'mean' | 'covariance' | 'regular' | 'odd'>

const nu = 5
const oddScale = 2.5
const oddNu = 30

/** @param roundings variance of each coordinate by rounding of the printed number */
export function coreOf(group: Joint, present: readonly boolean[], roundings: readonly number[]): Core {
  const { rows, mean, spread, columns } = patternOf(group, present)
  const wide = spread.map((line) => Float64Array.from(line))
  for (let c = 0; c < coordinates; c++)
    for (const i of columns[c]!)
      for (const j of columns[c]!) wide[i]![j]! += rows[i]![c]! * rows[j]![c]! * roundings[c]!
  const { inverse, halfLogDet } = invert(wide)
  const tightness = Float64Array.from({ length: coordinates }, (_, c) => {
    let sum = 0
    for (let i = 0; i < rows.length; i++)
      if (rows[i]![c])
        for (let j = 0; j < rows.length; j++) if (rows[j]![c]) sum += rows[i]![c]! * inverse[i]![j]! * rows[j]![c]!
    return sum
  })
  const d = rows.length
  return {
    rows,
    mean,
    precision: inverse,
    halfLogDet: -halfLogDet,
    tightness,
    logRegular: Math.log(group.regular) + logNorm(d),
    logOdd: Float64Array.from(
      group.odd,
      (share) => Math.log(share) + logNorm(d - 1) + logNorm(1, oddNu) - Math.log(oddScale),
    ),
  }
}

/** What does not change between records that carry the same fields. */
interface Pattern {
  readonly rows: readonly Float64Array[]
  readonly mean: Float64Array
  readonly spread: readonly Float64Array[]
  /** Rows that each coordinate is in. */
  readonly columns: readonly (readonly number[])[]
}

const patterns = new WeakMap<Joint, Map<string, Pattern>>()

function patternOf(group: Joint, present: readonly boolean[]): Pattern {
  const known = patterns.get(group) ?? new Map<string, Pattern>()
  patterns.set(group, known)
  const key = present.join()
  const found = known.get(key) ?? makePattern(group, present)
  known.set(key, found)
  return found
}

function makePattern(group: Joint, present: readonly boolean[]): Pattern {
  const chosen = usable(present)
  const total = (factors: readonly number[], of: (i: number) => number) =>
    factors.reduce((sum, f, i) => (f ? sum + f * of(i) : sum), 0)
  const rows = chosen.map((factors) =>
    Float64Array.from({ length: coordinates }, (_, c) => total(factors, (i) => features[i]![c]!)),
  )
  return {
    rows,
    mean: Float64Array.from(chosen, (factors) => total(factors, (i) => group.mean[i]!)),
    spread: chosen.map((p) =>
      Float64Array.from(chosen, (q) => total(p, (a) => total(q, (b) => group.covariance[a]![b]!))),
    ),
    columns: Array.from({ length: coordinates }, (_, c) => rows.flatMap((row, i) => (row[c] ? [i] : []))),
  }
}

/** Deviations of the coordinates given all else, in standard deviations, and the whole squared distance. */
export function pulls(core: Core, y: Float64Array, z: Float64Array): number {
  const { rows, mean, precision, tightness } = core
  const d = rows.length
  const x = new Float64Array(d)
  for (let i = 0; i < d; i++) {
    const row = rows[i]!
    let sum = -mean[i]!
    for (let c = 0; c < coordinates; c++) if (row[c] !== 0) sum += row[c]! * y[c]!
    x[i] = sum
  }
  let whole = 0
  z.fill(0)
  for (let i = 0; i < d; i++) {
    const line = precision[i]!
    const row = rows[i]!
    let sum = 0
    for (let j = 0; j < d; j++) sum += line[j]! * x[j]!
    whole += sum * x[i]!
    for (let c = 0; c < coordinates; c++) if (row[c] !== 0) z[c]! += row[c]! * sum
  }
  for (let c = 0; c < coordinates; c++) if (tightness[c]! > 0) z[c]! /= Math.sqrt(tightness[c]!)
  return whole
}

/** Logarithm of the density, up to what is the same for all values of the same fields. */
export function coreLog(core: Core, y: Float64Array, z: Float64Array): number {
  if (core.rows.length === 0) return 0
  const { regular, odd } = coreParts(core, y, z)
  let top = regular
  for (let c = 0; c < coordinates; c++) if (odd[c]! > top) top = odd[c]!
  let sum = Math.exp(regular - top)
  for (let c = 0; c < coordinates; c++) if (odd[c]! > top - 40) sum += Math.exp(odd[c]! - top)
  return core.halfLogDet + top + Math.log(sum)
}

/** The parts of the mixture as logarithms: nothing odd, and each coordinate odd. The array is used again by the next call. */
export function coreParts(
  core: Core,
  y: Float64Array,
  z: Float64Array,
): { readonly regular: number; readonly odd: Float64Array } {
  const d = core.rows.length
  const whole = pulls(core, y, z)
  for (let c = 0; c < coordinates; c++) {
    const square = z[c]! * z[c]!
    parts[c] = core.tightness[c]
      ? core.logOdd[c]! +
        logTail(Math.max(0, whole - square), d - 1) -
        ((oddNu + 1) / 2) * Math.log1p(square / (oddNu * oddScale * oddScale))
      : -Infinity
  }
  return { regular: core.logRegular + logTail(whole, d), odd: parts }
}

const parts = new Float64Array(coordinates)

/** What the density would be if a coordinate were where the others expect it. */
export const logWithout = (core: Core, whole: number, z: number): number =>
  core.halfLogDet + core.logRegular + logTail(Math.max(0, whole - z * z), core.rows.length)

const logTail = (square: number, d: number) => (-(nu + d) / 2) * Math.log1p(square / nu)

/** ln Γ((ν + d)/2) − ln Γ(ν/2) − d/2 ln(ν π), by the recurrence of Γ. */
function logNorm(d: number, freedom = nu): number {
  return logGamma((freedom + d) / 2) - logGamma(freedom / 2) - (d / 2) * Math.log(freedom * Math.PI)
}

/** For half-integers from 1/2. */
function logGamma(x: number): number {
  let sum = x % 1 === 0 ? 0 : 0.5 * Math.log(Math.PI)
  for (let k = x % 1 === 0 ? 1 : 0.5; k < x; k++) sum += Math.log(k)
  return sum
}
