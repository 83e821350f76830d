import { coordinates } from './features.ts'
import { invert } from './matrix.ts'
import { patternOf, type Joint, type Component, type Pattern } from './pattern.ts'
import { oddTail, tail } from './student.ts'

/**
 * The joint distribution of a record's features: a mixture of multivariate t, each mixed with records in which one
 * coordinate is honestly odd (a wide t by itself, beside the others as usual). So a true record that is odd in one field
 * costs little.
 */
export interface Core extends Pattern {
  readonly parts: readonly Part[]
}

/** One component of the mixture, for the features that can be formed; matrices row by row in one array. */
interface Part {
  /** Of the features. */
  readonly mean: Float64Array
  readonly inverse: Float64Array
  /** Of the coordinates, given all else. */
  readonly precision: Float64Array
  /** Share, and the constant of the density. */
  readonly weight: number
}

/** Where a record is in the distribution, so that its neighbours are reached by what they change. */
export interface Stand {
  readonly y: Float64Array
  /** Per component: the squared distance, and half its slope by coordinate. */
  readonly whole: Float64Array
  readonly pull: readonly Float64Array[]
  /** The likeliest component first, so that the others can be left out soon. */
  readonly order: readonly number[]
}

/** Nothing odd, and each coordinate odd. */
export const terms = coordinates + 1

/** @param roundings variance of each coordinate by rounding of the printed number */
export function coreOf(group: Joint, present: readonly boolean[], roundings: Float64Array): Core {
  const pattern = patternOf(group, present)
  return { ...pattern, parts: pattern.components.map((kind) => partOf(pattern, kind, roundings)) }
}

function partOf({ rows, columns, size }: Pattern, { mean, spread, weight }: Component, roundings: Float64Array): Part {
  const wide = spread.slice()
  for (let c = 0; c < coordinates; c++) {
    const column = columns[c]!
    for (let a = 0; a < column.length; a++)
      for (let b = 0; b < column.length; b++) {
        const [i, j] = [column[a]!, column[b]!]
        wide[i * size + j]! += rows[i]![c]! * rows[j]![c]! * roundings[c]!
      }
  }
  const { inverse, halfLogDet } = invert(wide, size)
  const precision = new Float64Array(coordinates * coordinates)
  for (let b = 0; b < coordinates; b++)
    for (let c = 0; c <= b; c++) {
      let sum = 0
      const [first, second] = [columns[b]!, columns[c]!]
      for (let i = 0; i < first.length; i++)
        for (let j = 0; j < second.length; j++)
          sum += rows[first[i]!]![b]! * inverse[first[i]! * size + second[j]!]! * rows[second[j]!]![c]!
      precision[b * coordinates + c] = precision[c * coordinates + b] = sum
    }
  return { mean, inverse, precision, weight: weight * Math.exp(-halfLogDet) }
}

export function standOf({ parts, rows, size }: Core, y: Float64Array): Stand {
  const pull = parts.map(() => new Float64Array(coordinates))
  const whole = new Float64Array(parts.length)
  const z = new Float64Array(size)
  const x = new Float64Array(size)
  for (let i = 0; i < size; i++)
    for (let c = 0; c < coordinates; c++) if (rows[i]![c] !== 0) z[i]! += rows[i]![c]! * y[c]!
  for (let k = 0; k < parts.length; k++) {
    const { mean, inverse } = parts[k]!
    for (let i = 0; i < size; i++) x[i] = z[i]! - mean[i]!
    for (let i = 0; i < size; i++) {
      let force = 0
      for (let j = 0; j < size; j++) force += inverse[i * size + j]! * x[j]!
      for (let c = 0; c < coordinates; c++) pull[k]![c]! += rows[i]![c]! * force
      whole[k]! += force * x[i]!
    }
  }
  const order = parts.map((_, k) => k)
  order.sort((a, b) => parts[b]!.weight * tail(whole[b]!, size) - parts[a]!.weight * tail(whole[a]!, size))
  return { y: y.slice(), whole, pull, order }
}

/** Logarithm of the density at `y`, up to what is the same for all values of the same fields. */
export function coreLog(core: Core, stand: Stand, y: Float64Array): number {
  if (core.size === 0) return 0
  const terms = densities(core, stand, y)
  let sum = least
  for (let i = 0; i < terms.length; i++) sum += terms[i]!
  return Math.log(sum)
}

/** The most that the density reaches, to within a little. */
export const coreMost = ({ parts, regular }: Core): number =>
  parts.length === 0 ? 0 : Math.log(regular * Math.max(...parts.map(({ weight }) => weight)))

/** Stands for what is too unlikely for a number. */
const least = 1e-300
// used again by each call, as some hundreds of candidates are tried on a record and each would make four arrays
const changed = new Int32Array(coordinates)
const shift = new Float64Array(coordinates)
const squares = new Float64Array(coordinates)
let all = new Float64Array(0)

/**
 * The terms of the mixture, `terms` of each component. A coordinate that is odd is left out of the distance of the others.
 * The array is used again by the next call.
 */
export function densities({ parts, formed, size, regular, odd }: Core, stand: Stand, y: Float64Array): Float64Array {
  if (all.length !== terms * parts.length) all = new Float64Array(terms * parts.length)
  let n = 0
  for (let c = 0; c < coordinates; c++)
    if (formed[c] && y[c] !== stand.y[c]) {
      changed[n] = c
      shift[n++] = y[c]! - stand.y[c]!
    }
  let sum = 0
  for (let o = 0; o < parts.length; o++) {
    const k = stand.order[o]!
    const { precision, weight } = parts[k]!
    const from = stand.pull[k]!
    const base = k * terms
    let whole = stand.whole[k]!
    for (let i = 0; i < n; i++) {
      const line = changed[i]! * coordinates
      whole += 2 * shift[i]! * from[changed[i]!]!
      for (let j = 0; j < n; j++) whole += shift[i]! * shift[j]! * precision[line + changed[j]!]!
    }
    let largest = 0
    for (let c = 0; c < coordinates; c++) {
      if (!formed[c]) continue
      const line = c * coordinates
      let pull = from[c]!
      for (let i = 0; i < n; i++) pull += shift[i]! * precision[line + changed[i]!]!
      squares[c] = (pull * pull) / precision[line + c]!
      if (squares[c]! > largest) largest = squares[c]!
    }
    // most components are far from a record, so that what is left of them does not show in the sum
    if (weight * tail(whole - largest, size) < 1e-6 * sum) {
      all.fill(0, base, base + terms)
      continue
    }
    sum += all[base] = weight * regular * tail(whole, size)
    for (let c = 0; c < coordinates; c++)
      sum += all[base + 1 + c] = formed[c]
        ? weight * odd[c]! * tail(whole - squares[c]!, size - 1) * oddTail(squares[c]!)
        : 0
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

export function expected({ parts, formed, size, regular, odd }: Core, stand: Stand, c: number): Expected {
  const tightness = (k: number) => parts[k]!.precision[c * coordinates + c]!
  let sum = least
  let most = 0
  let likeliest = 0
  for (let k = 0; k < parts.length; k++) {
    const { precision, weight } = parts[k]!
    const pull = stand.pull[k]!
    const whole = stand.whole[k]! - (pull[c]! * pull[c]!) / tightness(k)
    const density = weight * regular * tail(whole, size)
    sum += density
    if (density > most) {
      most = density
      likeliest = k
    }
    if (whole < beyond) continue
    // another coordinate may be odd as well
    for (let d = 0; d < coordinates; d++) {
      if (d === c || !formed[d]) continue
      const cross = precision[c * coordinates + d]!
      const left = pull[d]! - (cross * pull[c]!) / tightness(k)
      const square = (left * left) / (precision[d * coordinates + d]! - (cross * cross) / tightness(k))
      sum += weight * odd[d]! * tail(whole - square, size - 1) * oddTail(square)
    }
  }
  const t = tightness(likeliest)
  return { log: Math.log(sum), shift: -stand.pull[likeliest]![c]! / t, sd: 1 / Math.sqrt(t) }
}

/** A squared distance that true records hardly have. */
const beyond = 100
