import { coordinates } from './features.ts'
import type { Pattern } from './pattern.ts'
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
export interface Part {
  /** Of the features. */
  readonly mean: Float64Array
  readonly inverse: Float64Array
  /** Of the coordinates, given all else, and the variance of each then. */
  readonly precision: Float64Array
  readonly variance: Float64Array
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

/** Stands for what is too unlikely for a number. */
export const least = 1e-300

// used again by each call, as some hundreds of candidates are tried on a record and each would make four arrays
const changed = new Int32Array(coordinates)
const shift = new Float64Array(coordinates)
let all = new Float64Array(0)
let places = new Float64Array(0)

/**
 * The terms of the mixture, `terms` of each component. A coordinate that is odd is left out of the distance of the others.
 * The array is used again by the next call.
 *
 * @param floor  null where the sum is certainly below that
 */
export function densities(core: Core, stand: Stand, y: Float64Array, floor = 0): Float64Array | null {
  measure(core, stand, y)
  return floor > 0 && densityAtMost(core) < floor ? null : densitiesThere(core, stand)
}

/**
 * Of each component: the squared distance, the largest square of a coordinate given the others, whose it is, the second
 * largest, and all those squares.
 */
const each = 4 + coordinates

/** Measures how far `y` is from each component, for what follows. */
function measure({ parts, formed }: Core, stand: Stand, y: Float64Array): void {
  if (places.length !== each * parts.length) places = new Float64Array(each * parts.length)
  let n = 0
  for (let c = 0; c < coordinates; c++)
    if (formed[c] && y[c] !== stand.y[c]) {
      changed[n] = c
      shift[n++] = y[c]! - stand.y[c]!
    }
  for (let k = 0; k < parts.length; k++) {
    const { precision, variance } = parts[k]!
    const from = stand.pull[k]!
    const place = k * each
    let whole = stand.whole[k]!
    for (let i = 0; i < n; i++) {
      const line = changed[i]! * coordinates
      whole += 2 * shift[i]! * from[changed[i]!]!
      for (let j = 0; j < n; j++) whole += shift[i]! * shift[j]! * precision[line + changed[j]!]!
    }
    let [largest, second, oddest] = [0, 0, 0]
    for (let c = 0; c < coordinates; c++) {
      if (!formed[c]) continue
      let pull = from[c]!
      for (let i = 0; i < n; i++) pull += shift[i]! * precision[changed[i]! * coordinates + c]!
      const square = pull * pull * variance[c]!
      places[place + 4 + c] = square
      if (square > largest) {
        second = largest
        largest = square
        oddest = c
      } else if (square > second) second = square
    }
    places[place] = whole
    places[place + 1] = largest
    places[place + 2] = oddest
    places[place + 3] = second
  }
}

/** No less than the density at the place: all but the oddest coordinate are as if it were likely that they are odd. */
function densityAtMost({ parts, size, regular, odd, mostOdd }: Core): number {
  let most = least
  for (let k = 0; k < parts.length; k++) {
    const place = k * each
    const [whole, largest, second] = [places[place]!, places[place + 1]!, places[place + 3]!]
    most +=
      parts[k]!.weight *
      (regular * tail(whole, size) +
        odd[places[place + 2]!]! * tail(whole - largest, size - 1) * oddTail(largest) +
        mostOdd * tail(whole - second, size - 1))
  }
  return most
}

function densitiesThere({ parts, formed, size, regular, odd }: Core, { order }: Stand): Float64Array {
  if (all.length !== terms * parts.length) all = new Float64Array(terms * parts.length)
  let sum = 0
  for (const k of order) {
    const { weight } = parts[k]!
    const [base, place] = [k * terms, k * each]
    const whole = places[place]!
    // most components are far from a record, so that what is left of them does not show in the sum
    if (weight * tail(whole - places[place + 1]!, size) < 1e-6 * sum) {
      all.fill(0, base, base + terms)
      continue
    }
    sum += all[base] = weight * regular * tail(whole, size)
    for (let c = 0; c < coordinates; c++) {
      const square = places[place + 4 + c]!
      sum += all[base + 1 + c] = formed[c] ? weight * odd[c]! * tail(whole - square, size - 1) * oddTail(square) : 0
    }
  }
  return all
}
