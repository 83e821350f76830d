import type { GroupCalibration } from './calibration.ts'
import { coordinates, features, usable } from './features.ts'
import { invert } from './matrix.ts'

/**
 * The joint distribution of a record's features: a mixture of multivariate t, each mixed with records in which one
 * coordinate is honestly odd (a wide t by itself, beside the others as usual). So a true record that is odd in one place
 * costs little.
 */
export interface Core {
  readonly parts: readonly Part[]
  /** Coordinates that take part. */
  readonly formed: readonly boolean[]
  readonly features: number
  /** Shares with the constants of their densities. */
  readonly odd: Float64Array
  readonly regular: number
}

/** One component of the mixture, for the features that can be formed. */
interface Part {
  /** Features as factors of the coordinates. */
  readonly rows: readonly Float64Array[]
  readonly mean: Float64Array
  /** Of the coordinates, given all else. */
  readonly precision: readonly Float64Array[]
  readonly inverse: readonly Float64Array[]
  /** Share, and the constant of the density. */
  readonly weight: number
}

/** Where a record is in the distribution, so that its neighbours are reached by what they change. */
export interface Stand {
  readonly y: Float64Array
  /** Per component: the squared distance, and half its slope by coordinate. */
  readonly whole: Float64Array
  readonly pull: readonly Float64Array[]
}

/** The part of a calibration that the core is made of. */
export type Joint = Pick<GroupCalibration, 'parts' | 'regular' | 'odd'>

const nu = 5
const oddScale = 2.5
const oddNu = 30
/** Nothing odd, and each coordinate odd. */
export const ways = coordinates + 1

/** @param roundings variance of each coordinate by rounding of the printed number */
export function coreOf(group: Joint, present: readonly boolean[], roundings: readonly number[]): Core {
  const patterns = patternsOf(group, present)
  const d = patterns[0]!.rows.length
  return {
    parts: patterns.map((pattern) => partOf(pattern, roundings)),
    formed: Array.from({ length: coordinates }, (_, c) => patterns[0]!.columns[c]!.length > 0),
    features: d,
    regular: group.regular * norm(d),
    odd: Float64Array.from(group.odd, (share) => (share * norm(d - 1) * norm(1, oddNu)) / oddScale),
  }
}

function partOf({ rows, mean, spread, columns, weight }: Pattern, roundings: readonly number[]): Part {
  const wide = spread.map((line) => Float64Array.from(line))
  for (let c = 0; c < coordinates; c++)
    for (const i of columns[c]!)
      for (const j of columns[c]!) wide[i]![j]! += rows[i]![c]! * rows[j]![c]! * roundings[c]!
  const { inverse, halfLogDet } = invert(wide)
  const precision = Array.from({ length: coordinates }, () => new Float64Array(coordinates))
  for (let b = 0; b < coordinates; b++)
    for (let c = 0; c <= b; c++) {
      let sum = 0
      for (const i of columns[b]!) for (const j of columns[c]!) sum += rows[i]![b]! * inverse[i]![j]! * rows[j]![c]!
      precision[b]![c] = precision[c]![b] = sum
    }
  return { rows, mean, inverse, precision, weight: weight * Math.exp(-halfLogDet) }
}

/** What does not change between records that carry the same fields. */
interface Pattern {
  readonly rows: readonly Float64Array[]
  readonly mean: Float64Array
  readonly spread: readonly Float64Array[]
  /** Rows that each coordinate is in. */
  readonly columns: readonly (readonly number[])[]
  readonly weight: number
}

const known = new WeakMap<Joint, Map<string, readonly Pattern[]>>()

function patternsOf(group: Joint, present: readonly boolean[]): readonly Pattern[] {
  const patterns = known.get(group) ?? new Map<string, readonly Pattern[]>()
  known.set(group, patterns)
  const key = present.join()
  const found = patterns.get(key) ?? makePatterns(group, present)
  patterns.set(key, found)
  return found
}

function makePatterns(group: Joint, present: readonly boolean[]): readonly Pattern[] {
  const chosen = usable(present)
  const total = (factors: readonly number[], of: (i: number) => number) =>
    factors.reduce((sum, f, i) => (f ? sum + f * of(i) : sum), 0)
  const rows = chosen.map((factors) =>
    Float64Array.from({ length: coordinates }, (_, c) => total(factors, (i) => features[i]![c]!)),
  )
  const columns = Array.from({ length: coordinates }, (_, c) => rows.flatMap((row, i) => (row[c] ? [i] : [])))
  return group.parts.map(({ weight, mean, covariance }) => ({
    rows,
    columns,
    weight,
    mean: Float64Array.from(chosen, (factors) => total(factors, (i) => mean[i]!)),
    spread: chosen.map((p) => Float64Array.from(chosen, (q) => total(p, (a) => total(q, (b) => covariance[a]![b]!)))),
  }))
}

export function standOf(core: Core, y: Float64Array): Stand {
  const pull = core.parts.map(() => new Float64Array(coordinates))
  const x = new Float64Array(core.features)
  const whole = Float64Array.from(core.parts, ({ rows, mean, inverse }, k) => {
    for (let i = 0; i < x.length; i++) {
      x[i] = -mean[i]!
      for (let c = 0; c < coordinates; c++) if (rows[i]![c] !== 0) x[i]! += rows[i]![c]! * y[c]!
    }
    let square = 0
    for (let i = 0; i < x.length; i++) {
      let force = 0
      for (let j = 0; j < x.length; j++) force += inverse[i]![j]! * x[j]!
      for (let c = 0; c < coordinates; c++) if (rows[i]![c] !== 0) pull[k]![c]! += rows[i]![c]! * force
      square += force * x[i]!
    }
    return square
  })
  return { y: Float64Array.from(y), whole, pull }
}

/** Logarithm of the density at `y`, up to what is the same for all values of the same fields. */
export function coreLog(core: Core, stand: Stand, y: Float64Array): number {
  if (core.features === 0) return 0
  let sum = least
  for (const density of densities(core, stand, y)) sum += density
  return Math.log(sum)
}

/** Stands for what is too unlikely for a number. */
const least = 1e-300
const changed = new Int32Array(coordinates)
const shift = new Float64Array(coordinates)
let all = new Float64Array(0)

/**
 * The terms of the mixture, `ways` of each component. Powers of halves are cheaper than logarithms, and there are many
 * terms. The array is used again by the next call.
 */
export function densities({ parts, formed, features: d, regular, odd }: Core, stand: Stand, y: Float64Array) {
  if (all.length !== ways * parts.length) all = new Float64Array(ways * parts.length)
  let n = 0
  for (let c = 0; c < coordinates; c++)
    if (formed[c] && y[c] !== stand.y[c]) {
      changed[n] = c
      shift[n++] = y[c]! - stand.y[c]!
    }
  for (let k = 0; k < parts.length; k++) {
    const { precision, weight } = parts[k]!
    const from = stand.pull[k]!
    let whole = stand.whole[k]!
    for (let i = 0; i < n; i++) {
      const line = precision[changed[i]!]!
      whole += 2 * shift[i]! * from[changed[i]!]!
      for (let j = 0; j < n; j++) whole += shift[i]! * shift[j]! * line[changed[j]!]!
    }
    const base = k * ways
    all[base] = weight * regular * tail(whole, d)
    for (let c = 0; c < coordinates; c++) {
      all[base + 1 + c] = 0
      if (!formed[c]) continue
      const line = precision[c]!
      let pull = from[c]!
      for (let i = 0; i < n; i++) pull += shift[i]! * line[changed[i]!]!
      const square = (pull * pull) / line[c]!
      all[base + 1 + c] = weight * odd[c]! * tail(whole - square, d - 1) * oddTail(square)
    }
  }
  return all
}

/** What the record would be worth if a coordinate were where the others expect it. */
export interface Expected {
  readonly log: number
  /** How far the coordinate is from there, and the spread that it would have there. */
  readonly shift: number
  readonly sd: number
}

export function expected({ parts, features: d, regular }: Core, stand: Stand, c: number): Expected {
  let sum = least
  let most = 0
  let likeliest = 0
  for (let k = 0; k < parts.length; k++) {
    const { precision, weight } = parts[k]!
    const pull = stand.pull[k]![c]!
    const density = weight * regular * tail(stand.whole[k]! - (pull * pull) / precision[c]![c]!, d)
    sum += density
    if (density > most) {
      most = density
      likeliest = k
    }
  }
  const tightness = parts[likeliest]!.precision[c]![c]!
  return { log: Math.log(sum), shift: -stand.pull[likeliest]![c]! / tightness, sd: 1 / Math.sqrt(tightness) }
}

/** (1 + q/ν)^(-(ν + d)/2); q is a square, but for rounding. */
const tail = (square: number, d: number) => inverseHalves(1 + Math.max(0, square) / nu, nu + d)
const oddTail = (square: number) => inverseHalves(1 + square / (oddNu * oddScale * oddScale), oddNu + 1)

/** x^(-n/2) for a whole n. */
function inverseHalves(x: number, n: number): number {
  let power = n & 1 ? Math.sqrt(x) : 1
  let square = x
  for (let left = n >> 1; left > 0; left >>= 1) {
    if (left & 1) power *= square
    square *= square
  }
  return 1 / power
}

/** Γ((ν + d)/2) / Γ(ν/2) / (ν π)^(d/2), by the recurrence of Γ. */
function norm(d: number, freedom = nu): number {
  return Math.exp(logGamma((freedom + d) / 2) - logGamma(freedom / 2) - (d / 2) * Math.log(freedom * Math.PI))
}

/** For half-integers from 1/2. */
function logGamma(x: number): number {
  let sum = x % 1 === 0 ? 0 : 0.5 * Math.log(Math.PI)
  for (let k = x % 1 === 0 ? 1 : 0.5; k < x; k++) sum += Math.log(k)
  return sum
}
