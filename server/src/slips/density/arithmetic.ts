import type { GroupCalibration, Mixture } from '../model/calibration.ts'
import { index, pointers } from '../evidence.ts'
import { ln, mixtureLog, relative } from './logs.ts'

/** The arithmetic that a record repeats, as logarithms that are 0 where it agrees, and the fields in it. */
export const identities = [
  { plus: [index.vmp, index.imp], minus: [index.pmax], also: [] },
  { plus: [index.efficiency, index.length, index.width], minus: [index.pmax], also: [index.isc, index.cells] },
  { plus: [index.noctVmp, index.noctImp], minus: [index.noctPmax], also: [] },
] as const

/** Whether a field is in an identity, by identity. */
export const takesPart = identities.map(({ plus, minus, also }) =>
  pointers.map((_, p) => [...plus, ...minus, ...also].some((one) => one === p)),
)

/**
 * Printed efficiencies and NOCT powers that are not the plain product: estimated, since the open ratings carry neither. Sheets of
 * flexible panels often print the efficiency of the cells, 1.05 to 1.5 times that of the outline; those of framed modules
 * hardly ever.
 */
export const efficiencyOfFramed: Mixture = [
  [0.9874, 0, 0.0015],
  [0.012, 0, 0.006],
  [0.0001, 0.07, 0.05],
  [0.0005, 0, 0.3],
]
export const efficiencyOfOthers: Mixture = [
  [0.5, 0, 0.0015],
  [0.1, 0, 0.006],
  [0.0005, 0, 0.3],
]
/** Share of flexible panels whose sheets print the efficiency of the cells, and how much it may be above that of the outline. */
const ofCells = 0.4
const overOutline = [
  [1 / 3, 0.11, 0.05],
  [1 / 3, 0.22, 0.06],
  [1 / 3, 0.33, 0.05],
] as const
/** Current of crystalline cells at STC [A/m2] and its spread as logarithm: 35 to 42 mA/cm2; from memory. */
const cellCurrent = 385
const currentSpread = 0.09

/** Density of a printed efficiency that is so far above the outline's, as it is where it is that of the cells. */
function cellsLog({ present, counted }: Arithmetic, off: number, v: Float64Array): number {
  let density = 0
  for (const [weight, mean, sd] of overOutline)
    density += (weight * Math.exp(-((off - mean) ** 2) / (2 * sd * sd))) / (sd * Math.sqrt(2 * Math.PI))
  if (!counted || !present[index.isc]) return ofCells * density
  // the area of the cells alone is then that of their current
  const there = Math.log((cellCurrent * v[index.length]! * v[index.width]!) / (v[index.isc]! * v[index.cells]!))
  const z = (off - there) / currentSpread
  const ofCurrent = Math.exp((-z * z) / 2) / (currentSpread * Math.sqrt(2 * Math.PI))
  return ofCells * Math.min(density, 4) * (Number.isFinite(ofCurrent) ? ofCurrent / 3 : 0)
}

const noctProduct: Mixture = [
  [0.95, 0, 0.002],
  [0.045, 0, 0.006],
  [0.005, 0, 0.03],
]

interface Arithmetic {
  readonly group: Pick<GroupCalibration, 'product'>
  readonly printedEfficiency: Mixture
  readonly present: readonly boolean[]
  readonly counted: boolean
  readonly isGlass: boolean
}

interface Typed {
  readonly values: Float64Array
  readonly halves: Float64Array
}

/** Logarithm of an identity's density in one record; 0 where a part is missing. */
export function identityLog(frame: Arithmetic, which: number, v: Float64Array, halves: Float64Array): number {
  const found = disagreement(frame, which, v, halves)
  if (!found) return 0
  const log = mixtureLog(found.mixture, found.off, found.variance)
  if (which !== 1 || frame.isGlass || found.off < 0) return log
  return Math.log(Math.exp(log) + cellsLog(frame, found.off, v))
}

/** How far an identity is from being true, with the variance by rounding; null where a part is missing. */
function disagreement(
  { group, printedEfficiency, present }: Arithmetic,
  which: number,
  v: Float64Array,
  halves: Float64Array,
): { mixture: Mixture; off: number; variance: number } | null {
  const { plus, minus } = identities[which]!
  let off = which === 1 ? Math.log(1000) : 0
  let variance = 0
  for (const p of plus) {
    if (!present[p]) return null
    off += ln(v[p]!)
    variance += relative(halves[p]!, v[p]!) ** 2 / 3
  }
  for (const p of minus) {
    if (!present[p]) return null
    off -= ln(v[p]!)
    variance += relative(halves[p]!, v[p]!) ** 2 / 3
  }
  return { mixture: which === 0 ? group.product : which === 1 ? printedEfficiency : noctProduct, off, variance }
}

/**
 * What the arithmetic could gain by another value, by field, from its logarithms as typed: that it holds then. Where it holds already, a field loses by
 * another value, as slips that a check can detect change a number by more than `least`.
 */
export function identityGains(frame: Arithmetic & Typed, logs: readonly number[]): Float64Array {
  const gains = new Float64Array(pointers.length)
  identities.forEach(({ plus, minus }, i) => {
    const found = disagreement(frame, i, frame.values, frame.halves)
    if (!found) return
    const { mixture, off, variance } = found
    const now = logs[i]!
    const nearby = [off - least, off + least].map((moved) => mixtureLog(mixture, moved, variance))
    const gain =
      Math.abs(off) < least
        ? Math.min(0, Math.max(...nearby) - now)
        : Math.max(0, mixtureLog(mixture, 0, variance) - now)
    for (const field of [...plus, ...minus]) gains[field]! += gain
  })
  return gains
}

/** Estimated: below this the printed digits of true records differ as well. */
const least = 0.015
