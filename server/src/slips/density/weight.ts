import type { Evidence } from '../evidence.ts'
import type { Mixture } from '../model/calibration.ts'
import { ln, mixtureLog, peak, relative } from './logs.ts'

/** Readings that only say whether the sides are right. */
export const weightPointers = ['/weight', '/size/thickness'] as const

/** A weight, and how likely a panel has it at a size. */
export interface Weight {
  /** ln of the weight [kg]. */
  readonly log: number
  /** ln(weight / area [kg/m2]). */
  readonly perArea: Mixture
  readonly variance: number
}

/**
 * Flexible panels of crystalline cells weigh 2 to 4.5 kg/m2, and what films, cells and a back weigh together follows their
 * thickness. Some sheets give the weight with cables, or packed. Common practice, no source; shares and spreads are estimated.
 */
const usual: Mixture = [
  [0.8, Math.log(3), 0.25],
  [0.15, Math.log(3.2), 0.5],
  [0.05, Math.log(3.2), 1.2],
]
/** Density of films, cells and back together [kg/m3]; estimated. */
const bulk = 1250
/** Boards and laminates that are thicker have a core. */
const thin = 0.004

const ofThickness = (metres: number): Mixture => [
  [0.6, Math.log(bulk * metres), 0.11],
  ...usual.map(([share, mean, sd]) => [0.4 * share, mean, sd] as const),
]

/** What the weight of a record says, where its kind of panel is known well enough. */
export function weightOf({ construction, readings }: Evidence): Weight | undefined {
  const [weight, thickness] = weightPointers.map((pointer) => readings[pointer])
  if (construction !== 'flexible' || !weight || weight.value <= 0) return undefined
  if (thickness && !(thickness.value > 0 && thickness.value < thin)) return undefined
  return {
    log: Math.log(weight.value),
    perArea: thickness ? ofThickness(thickness.value) : usual,
    variance: relative(weight.half, weight.value) ** 2 / 3,
  }
}

/** Logarithm of the density of the weight at sides of `length` by `width` [m]. */
export const weightLog = ({ log, perArea, variance }: Weight, length: number, width: number): number =>
  mixtureLog(perArea, log - ln(length) - ln(width), variance)

/** The most that it reaches at any sides. */
export const weightMost = ({ perArea }: Weight): number => peak(perArea)
