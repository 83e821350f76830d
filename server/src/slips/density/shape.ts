import type { GroupCalibration, Mixture } from '../model/calibration.ts'
import { index, pointers } from '../evidence.ts'
import { onceEach } from '../../records/once-each.ts'
import { ln, mixtureLog, peak } from './logs.ts'
import { weightLog, weightMost, type Weight } from './weight.ts'

/** ln(area [m2]) of panels whose cells are not counted: from a flexible 10 W panel to the largest glass. */
const anyArea: Mixture = [
  [0.7, Math.log(1.7), 0.35],
  [0.3, Math.log(0.9), 0.9],
]

/**
 * ln(longer / shorter side) of framed panels where no efficiency says how large they are, so that their ratio alone speaks against a side:
 * a few are small, of which the open ratings list hardly any, with cells in four by nine or six by six. Shares and spread are estimated.
 */
const withSmallOnes = onceEach(({ aspect }: Pick<GroupCalibration, 'aspect'>): Mixture => [
  ...aspect.map(([share, mean, sd]) => [0.95 * share, mean, sd] as const),
  [0.05, Math.log(1.8), 0.35],
])

/** How usual each cell count is. */
export type Counts = Readonly<Record<number, number>>

export const countsOfGlass: Counts = {
  60: 0.3,
  72: 0.3,
  36: 0.06,
  54: 0.06,
  48: 0.03,
  66: 0.06,
  96: 0.06,
  78: 0.02,
  80: 0.02,
}

interface Shape {
  readonly group: Pick<GroupCalibration, 'aspect' | 'cellArea'>
  readonly counts: Counts
  readonly isGlass: boolean
  readonly present: readonly boolean[]
  /** Cells are counted alike in this group, and a count is given. */
  readonly counted: boolean
  readonly weight: Weight | undefined
}

/** How likely the shape is: cell area, sides, weight per area, cell count. */
export function shapeLog(shape: Shape, v: Float64Array): number {
  const sum = countLog(shape, v)
  if (!shape.present[index.length] || !shape.present[index.width]) return sum
  return sum + aspectLog(shape, v) + areaLog(shape, v) + ofWeight(shape, v)
}

const ofWeight = ({ weight }: Shape, v: Float64Array) =>
  weight ? weightLog(weight, v[index.length]!, v[index.width]!) : 0

const countLog = ({ counted, counts }: Shape, v: Float64Array) =>
  counted ? Math.log(counts[v[index.cells]!] ?? (Number.isInteger(v[index.cells]!) ? 0.001 : 1e-6)) : 0

const aspectsOf = ({ group, isGlass, present }: Shape): Mixture =>
  isGlass && !present[index.efficiency] ? withSmallOnes(group) : group.aspect

function aspectLog(shape: Shape, v: Float64Array): number {
  const aspect = ln(v[index.length]!) - ln(v[index.width]!)
  return mixtureLog(aspectsOf(shape), Math.abs(aspect)) + (aspect < 0 ? -2 : 0)
}

function areaLog({ group, counted }: Shape, v: Float64Array): number {
  const area = ln(v[index.length]!) + ln(v[index.width]!)
  return counted ? mixtureLog(group.cellArea, area - ln(v[index.cells]!)) : mixtureLog(anyArea, area)
}

/** What the shape could gain by another value, by field. */
export function shapeGains(shape: Shape, v: Float64Array): Float64Array {
  const gains = new Float64Array(pointers.length)
  const isSized = shape.present[index.length] && shape.present[index.width]
  const ofArea = isSized ? peak(shape.counted ? shape.group.cellArea : anyArea) - areaLog(shape, v) : 0
  const byWeight = isSized && shape.weight ? weightMost(shape.weight) - ofWeight(shape, v) : 0
  if (isSized)
    gains[index.length] = gains[index.width] = peak(aspectsOf(shape)) - aspectLog(shape, v) + ofArea + byWeight
  if (shape.counted)
    gains[index.cells] = Math.log(Math.max(...Object.values(shape.counts))) - countLog(shape, v) + ofArea
  return gains
}

/** Fields that the shape hangs on. */
export const shaping: readonly number[] = [index.length, index.width, index.cells]
