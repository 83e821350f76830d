import { onceEach } from '../../records/once-each.ts'
import type { CalibratedPart, GroupCalibration, Mixture } from './calibration.ts'
import { tilted } from './technologies.ts'

/**
 * Flexible and folding panels are hardly in the open ratings, so what those teach about cells is carried over. The cells are the
 * same, in pieces of any size; margins, seams and eyelets leave 60 to 92 % of the area to them, where glass leaves about 82 %.
 * Common practice, no source.
 */
export function flexible(group: GroupCalibration, technology: string | undefined): GroupCalibration {
  const known = byTechnology(group)
  let found = known.get(technology)
  if (!found)
    known.set(technology, (found = { ...group, parts: tilted(group.parts.map(ofCells), technology), cellArea, aspect }))
  return found
}

/** One for each, as joint distributions are kept by the object. */
const byTechnology = onceEach((_: GroupCalibration) => new Map<string | undefined, GroupCalibration>())

/** Index of the current through a square metre among the features. */
const density = 1
/** ln of the share of cells in the area of flexible panels, less that of glass: mean and spread. */
const cover = { mean: Math.log(0.76 / 0.82), sd: 0.135 }
/** Further variance: of Voc a cell and of NOCT, which sheets of flexible panels give in many ways, and of the current through the area. */
const more: Readonly<Record<number, number>> = { 0: 0.03 ** 2, [density]: cover.sd ** 2, 7: 3 ** 2 }
/** What the cells are like varies more than in the open ratings, by a fifth of the spread; estimated. */
const wider = 1.5

const ofCells = ({ weight, mean, covariance }: CalibratedPart): CalibratedPart => ({
  weight,
  mean: mean.map((m, i) => (i === density ? m + cover.mean : m)),
  covariance: covariance.map((line, i) => line.map((v, j) => wider * v + (i === j ? (more[i] ?? 0) : 0))),
})

/** ln(area / cells [m2]) of whole cells and of halves, thirds and quarters; shares and spreads are estimated. */
const cellArea: Mixture = [
  [0.5, Math.log(0.031), 0.25],
  [0.45, Math.log(0.011), 0.5],
  [0.05, Math.log(0.015), 1],
]

/** ln(length / width); estimated. */
const aspect: Mixture = [
  [0.5, Math.log(2), 0.3],
  [0.5, Math.log(1.8), 0.6],
]

/** Batteries of 12 V take 32 to 44 cells in series (common practice, no source); the shares are estimated. */
const usualCounts = { 32: 0.09, 33: 0.09, 36: 0.4, 40: 0.07, 44: 0.05, 60: 0.02, 64: 0.02, 66: 0.02, 72: 0.04 }

/** How usual each cell count is. Cells lie in rows, most often in an even number of them. */
export const countsOfFlexible: Readonly<Record<number, number>> = {
  ...Object.fromEntries(
    Array.from({ length: 121 }, (_, n) => [n, n < 10 ? 1e-4 : (n < 24 || n > 44 ? 0.07 : 1) * inRows(n)]),
  ),
  ...usualCounts,
}

/** A prime number of cells takes the place of one for the junction box. */
function inRows(n: number): number {
  const rows = [2, 3, 4, 5, 6].filter((row) => n % row === 0)
  return rows.length === 0 ? 0.002 : n % 2 === 1 ? 0.006 : rows.length === 1 ? 0.018 : 0.025
}
