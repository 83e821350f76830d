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
  readonly logOdd: Float64Array
  readonly logRegular: number
}

/** One component of the mixture, for the features that can be formed. */
interface Part {
  /** Features as factors of the coordinates. */
  readonly rows: readonly Float64Array[]
  readonly mean: Float64Array
  /** Of the coordinates, given all else. */
  readonly precision: readonly Float64Array[]
  readonly inverse: readonly Float64Array[]
  readonly logWeight: number
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
    logRegular: Math.log(group.regular) + logNorm(d),
    logOdd: Float64Array.from(
      group.odd,
      (share) => Math.log(share) + logNorm(d - 1) + logNorm(1, oddNu) - Math.log(oddScale),
    ),
  }
}

function partOf({ rows, mean, spread, columns, weight }: Pattern, roundings: readonly number[]): Part {
  const wide = spread.map((line) => Float64Array.from(line))
  for (let c = 0; c < coordinates; c++)
    for (const i of columns[c]!)
      for (const j of columns[c]!) wide[i]![j]! += rows[i]![c]! * rows[j]![c]! * roundings[c]!
  const { inverse, halfLogDet } = invert(wide)
  const precision = Array.from({ length: coordinates }, (_, b) =>
    Float64Array.from({ length: coordinates }, (_, c) => {
      let sum = 0
      for (const i of columns[b]!) for (const j of columns[c]!) sum += rows[i]![b]! * inverse[i]![j]! * rows[j]![c]!
      return sum
    }),
  )
  return { rows, mean, inverse, precision, logWeight: Math.log(weight) - halfLogDet }
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
  const whole = Float64Array.from(core.parts, ({ rows, mean, inverse }, k) => {
    const x = rows.map((row, i) => {
      let sum = -mean[i]!
      for (let c = 0; c < coordinates; c++) if (row[c] !== 0) sum += row[c]! * y[c]!
      return sum
    })
    return rows.reduce((square, row, i) => {
      const line = inverse[i]!
      const force = x.reduce((sum, xj, j) => sum + line[j]! * xj, 0)
      for (let c = 0; c < coordinates; c++) if (row[c] !== 0) pull[k]![c]! += row[c]! * force
      return square + force * x[i]!
    }, 0)
  })
  return { y: Float64Array.from(y), whole, pull }
}

/** Logarithm of the density at `y`, up to what is the same for all values of the same fields. */
export function coreLog(core: Core, stand: Stand, y: Float64Array): number {
  if (core.features === 0) return 0
  const logs = waysLog(core, stand, y)
  let top = -Infinity
  for (const log of logs) if (log > top) top = log
  let sum = 0
  for (const log of logs) if (log > top - 40) sum += Math.exp(log - top)
  return top + Math.log(sum)
}

const changed = new Int32Array(coordinates)
const shift = new Float64Array(coordinates)
let logs = new Float64Array(0)

/** The terms of the mixture as logarithms, `ways` of each component. The array is used again by the next call. */
export function waysLog({ parts, formed, features: d, logRegular, logOdd }: Core, stand: Stand, y: Float64Array) {
  if (logs.length !== ways * parts.length) logs = new Float64Array(ways * parts.length)
  let n = 0
  for (let c = 0; c < coordinates; c++)
    if (formed[c] && y[c] !== stand.y[c]) {
      changed[n] = c
      shift[n++] = y[c]! - stand.y[c]!
    }
  for (let k = 0; k < parts.length; k++) {
    const { precision, logWeight } = parts[k]!
    const from = stand.pull[k]!
    let whole = stand.whole[k]!
    for (let i = 0; i < n; i++) {
      const line = precision[changed[i]!]!
      whole += 2 * shift[i]! * from[changed[i]!]!
      for (let j = 0; j < n; j++) whole += shift[i]! * shift[j]! * line[changed[j]!]!
    }
    const base = k * ways
    logs[base] = logWeight + logRegular + logTail(whole, d)
    for (let c = 0; c < coordinates; c++) {
      const tightness = precision[c]![c]!
      if (tightness <= 0) {
        logs[base + 1 + c] = -Infinity
        continue
      }
      let pull = from[c]!
      for (let i = 0; i < n; i++) pull += shift[i]! * precision[c]![changed[i]!]!
      const square = (pull * pull) / tightness
      logs[base + 1 + c] =
        logWeight +
        logOdd[c]! +
        logTail(Math.max(0, whole - square), d - 1) -
        ((oddNu + 1) / 2) * Math.log1p(square / (oddNu * oddScale * oddScale))
    }
  }
  return logs
}

/** What the record would be worth if a coordinate were where the others expect it. */
export interface Expected {
  readonly log: number
  /** How far the coordinate is from there, and the spread that it would have there. */
  readonly shift: number
  readonly sd: number
}

export function expected({ parts, features: d, logRegular }: Core, stand: Stand, c: number): Expected {
  let sum = 0
  let best: Expected = { log: -Infinity, shift: 0, sd: 0 }
  const all = parts.map(({ precision, logWeight }, k) => {
    const tightness = precision[c]![c]!
    const pull = stand.pull[k]![c]!
    const log = logWeight + logRegular + logTail(Math.max(0, stand.whole[k]! - (pull * pull) / tightness), d)
    if (log > best.log) best = { log, shift: -pull / tightness, sd: 1 / Math.sqrt(tightness) }
    return log
  })
  for (const log of all) sum += Math.exp(log - best.log)
  return { ...best, log: best.log + Math.log(sum) }
}

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
