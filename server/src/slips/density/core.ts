import { densities, least, type Core, type Part, type Stand } from './densities.ts'
import { coordinates } from './features.ts'
import { invert } from './matrix.ts'
import { patternOf, type Column, type Component, type Joint, type Pattern } from './pattern.ts'
import { oddTail, tail } from './student.ts'

/** @param roundings variance of each coordinate by rounding of the printed number */
export function coreOf(group: Joint, present: readonly boolean[], roundings: Float64Array): Core {
  const pattern = patternOf(group, present)
  return { ...pattern, parts: pattern.components.map((kind) => partOf(pattern, kind, roundings)) }
}

function partOf({ columns, size }: Pattern, { mean, spread, weight }: Component, roundings: Float64Array): Part {
  const wide = spread.slice()
  for (let c = 0; c < coordinates; c++) {
    const { rows, factors } = columns[c]!
    for (let a = 0; a < rows.length; a++)
      for (let b = 0; b < rows.length; b++)
        wide[rows[a]! * size + rows[b]!]! += factors[a]! * factors[b]! * roundings[c]!
  }
  const { inverse, halfLogDet } = invert(wide, size)
  const precision = precisionOf(columns, inverse, size)
  const variance = new Float64Array(coordinates)
  for (let c = 0; c < coordinates; c++) variance[c] = 1 / precision[c * coordinates + c]!
  return { mean, inverse, precision, variance, weight: weight * Math.exp(-halfLogDet) }
}

/** The inverse as the coordinates see it. */
function precisionOf(columns: readonly Column[], inverse: Float64Array, size: number): Float64Array {
  const precision = new Float64Array(coordinates * coordinates)
  for (let c = 0; c < coordinates; c++) {
    const { rows, factors } = columns[c]!
    half.fill(0, 0, size)
    for (let j = 0; j < rows.length; j++) {
      const row = rows[j]! * size
      for (let i = 0; i < size; i++) half[i]! += inverse[row + i]! * factors[j]!
    }
    for (let b = c; b < coordinates; b++) {
      const other = columns[b]!
      let sum = 0
      for (let i = 0; i < other.rows.length; i++) sum += other.factors[i]! * half[other.rows[i]!]!
      precision[b * coordinates + c] = precision[c * coordinates + b] = sum
    }
  }
  return precision
}

// used again by each call: no caller keeps it
const half = new Float64Array(coordinates + 1)

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

/**
 * Logarithm of the density at `y`, up to what is the same for all values of the same fields.
 *
 * @param floor  -Infinity where the density is certainly below that
 */
export function coreLog(core: Core, stand: Stand, y: Float64Array, floor = -Infinity): number {
  if (core.size === 0) return 0
  const terms = densities(core, stand, y, Math.exp(floor))
  if (!terms) return -Infinity
  let sum = least
  for (let i = 0; i < terms.length; i++) sum += terms[i]!
  return Math.log(sum)
}

/** The most that the density reaches, to within a little. */
export const coreMost = ({ parts, regular }: Core): number =>
  parts.length === 0 ? 0 : Math.log(regular * Math.max(...parts.map(({ weight }) => weight)))

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
