import type { GroupCalibration, Mixture } from '../model/calibration.ts'
import { at, pointers } from '../evidence.ts'
import { ln, mixtureLog, relative } from './logs.ts'

/** The arithmetic that a record repeats, as logarithms that are 0 where it agrees, and the fields in it. */
export const identities = [
  { plus: [at.vmp, at.imp], minus: [at.pmax] },
  { plus: [at.efficiency, at.length, at.width], minus: [at.pmax] },
  { plus: [at.noctVmp, at.noctImp], minus: [at.noctPmax] },
] as const

/** Whether a place is in an identity, by identity. */
export const takesPart = identities.map(({ plus, minus }) =>
  pointers.map((_, p) => [...plus, ...minus].some((one) => one === p)),
)

/**
 * Printed efficiencies and NOCT powers that are not the plain product: judged, since the open ratings carry neither. Sheets of
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
  [0.2, 0.12, 0.06],
  [0.2, 0.28, 0.09],
  [0.0005, 0, 0.3],
]
const noctProduct: Mixture = [
  [0.95, 0, 0.002],
  [0.045, 0, 0.006],
  [0.005, 0, 0.03],
]

interface Arithmetic {
  readonly group: Pick<GroupCalibration, 'product'>
  readonly printedEfficiency: Mixture
  readonly present: readonly boolean[]
}

interface Typed {
  readonly values: Float64Array
  readonly halves: Float64Array
}

/** Logarithm of an identity's density in one record; 0 where a part is missing. */
export function identityLog(frame: Arithmetic, which: number, v: Float64Array, halves: Float64Array): number {
  const found = disagreement(frame, which, v, halves)
  return found ? mixtureLog(found.mixture, found.off, found.variance) : 0
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
 * What the arithmetic could gain by another value, by place, from its logarithms as typed: that it holds then. Where it holds already, a field loses by
 * another value, as slips that a check can tell change a number by more than `least`.
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
    for (const place of [...plus, ...minus]) gains[place]! += gain
  })
  return gains
}

/** Judged: below this the printed digits of true records differ as well. */
const least = 0.015
