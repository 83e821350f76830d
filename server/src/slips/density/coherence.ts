import { efficiencyOfFramed, efficiencyOfOthers, identities, identityLog, takesPart } from './arithmetic.ts'
import type { GroupCalibration, Mixture } from '../model/calibration.ts'
import { countsOfFlexible, flexible } from '../model/flexible.ts'
import { isOfGlass } from '../model/group.ts'
import { coreLog, coreMost, coreOf, expected, standOf } from './core.ts'
import type { Core, Stand } from './densities.ts'
import { index, pointers, type Evidence } from '../evidence.ts'
import { familyLog, type Family } from '../family/family.ts'
import { coefficients } from '../fields.ts'
import { coordinate, coordinates } from './features.ts'
import { ln, relative } from './logs.ts'
import { isAbsolute } from '../typos/printed.ts'
import { weightOf, type Weight } from './weight.ts'
import { countsOfGlass, shapeGains, shapeLog, shaping, type Counts } from './shape.ts'

/** Used again by each call, as some hundreds of candidates are tried on a record. No caller keeps it. */
const y = new Float64Array(coordinates)

/** A record as numbers, and the model that they are compared with. */
export interface Frame {
  readonly group: GroupCalibration
  readonly printedEfficiency: Mixture
  readonly counts: Counts
  readonly isGlass: boolean
  readonly values: Float64Array
  readonly halves: Float64Array
  readonly present: readonly boolean[]
  /** Coefficients typed per module, by field. */
  readonly absolute: readonly boolean[]
  /** Numbers that end with their decimal point. */
  readonly unfinished: readonly boolean[]
  readonly core: Core
  readonly stand: Stand
  /** Cells are counted alike in this group, and a count is given. */
  readonly counted: boolean
  readonly weight: Weight | undefined
  readonly family: Family | null
  /** What a change of other fields leaves as it is. */
  readonly typed: Typed
}

interface Typed {
  readonly shape: number
  readonly shapeGains: Float64Array
  readonly identities: readonly number[]
  readonly core: number
  /** The most that the core reaches anywhere. */
  readonly most: number
  /** What the core would gain if each coordinate were as the others expect it. */
  readonly gains: Float64Array
}

export function frameOf(
  evidence: Evidence,
  calibrated: GroupCalibration,
  countsCells: boolean,
  family: Family | null,
): Frame {
  const isGlass = isOfGlass(evidence)
  const group = isGlass ? calibrated : flexible(calibrated, evidence.technology)
  const values = new Float64Array(pointers.length).fill(NaN)
  const halves = new Float64Array(pointers.length)
  const present: boolean[] = []
  const absolute: boolean[] = []
  const unfinished: boolean[] = []
  pointers.forEach((pointer, field) => {
    const reading = evidence.readings[pointer]
    present.push(reading !== undefined)
    absolute.push(reading !== undefined && coefficients.includes(field) && isAbsolute(reading.text))
    unfinished.push(reading !== undefined && /\d[.,](?!\d)/.test(reading.text))
    if (!reading) return
    values[field] = reading.value
    halves[field] = reading.half
  })
  const counted = countsCells && present[index.cells]!
  const printedEfficiency = isGlass ? efficiencyOfFramed : efficiencyOfOthers
  const counts = isGlass ? countsOfGlass : countsOfFlexible
  const partial = {
    group,
    printedEfficiency,
    counts,
    isGlass,
    values,
    halves,
    present,
    absolute,
    unfinished,
    counted,
    weight: weightOf(evidence),
    family,
  }
  const formed = sources.map((fields, c) => (c === coordinate.cells ? counted : fields.every((p) => present[p])))
  const roundings = new Float64Array(coordinates)
  sources.forEach((fields, c) => {
    if (c !== coordinate.cells) for (const field of fields) roundings[c]! += rounding(partial, field)
  })
  const core = coreOf(group, formed, roundings)
  coordinatesOf(partial, values, y)
  const stand = standOf(core, y)
  const parts = identities.map((_, i) => identityLog(partial, i, values, halves))
  const now = coreLog(core, stand, stand.y)
  const gains = new Float64Array(coordinates)
  for (let c = 0; c < coordinates; c++) if (core.formed[c]) gains[c] = Math.max(0, expected(core, stand, c).log - now)
  const shape = shapeLog(partial, values)
  const typed = {
    shape,
    shapeGains: shapeGains(partial, values),
    identities: parts,
    core: now,
    most: coreMost(core),
    gains,
  }
  return { ...partial, core, stand, typed }
}

/** The fields behind each coordinate. */
export const sources: readonly (readonly number[])[] = [
  [index.cells],
  [index.length, index.width],
  [index.voc],
  [index.isc],
  [index.vmp],
  [index.imp],
  [index.gamma],
  [index.beta],
  [index.alpha],
  [index.noct],
  [index.noctImp],
  [index.noctVmp],
]

const rawPlaces: readonly number[] = [index.gamma, index.beta, index.alpha, index.noct]

/** Variance by rounding, of the logarithm where the coordinate is one; no coarser than 3 %, so that gross slips still show. */
function rounding({ values, halves, absolute }: Pick<Frame, 'values' | 'halves' | 'absolute'>, field: number): number {
  const half = halves[field]!
  if (!rawPlaces.includes(field)) return relative(half, values[field]!) ** 2 / 3
  if (field === index.noct) return Math.min(half, 1) ** 2 / 3
  const share = half / (absolute[field] ? Math.abs(values[whole(field)]!) : 1)
  return Math.min(100 * share, 0.01) ** 2 / 3
}

/** What an absolute coefficient is a share of. */
const whole = (field: number) => (field === index.gamma ? index.pmax : field === index.beta ? index.voc : index.isc)

type Absolute = Pick<Frame, 'absolute'>

function coordinatesOf(frame: Absolute, v: Float64Array, y: Float64Array): void {
  for (let c = 0; c < coordinates; c++) y[c] = one(frame, v, c)
}

/** The coordinate that each field is behind; -1 for what only identities hold. */
const coordinateOf = pointers.map((_, field) => sources.findIndex((fields) => fields.includes(field)))

function one(frame: Absolute, v: Float64Array, c: number): number {
  const field = sources[c]![0]!
  if (c === coordinate.area) return ln(v[index.length]!) + ln(v[index.width]!)
  if (c === coordinate.noct) return v[field]!
  return coefficients.includes(field) ? percent(frame, v, field) : ln(v[field]!)
}

const percent = (frame: Absolute, v: Float64Array, field: number) =>
  (100 * v[field]!) / (frame.absolute[field] ? v[whole(field)]! : 1)

/**
 * How well a whole record hangs together: logarithm of its density; -Infinity where that is certainly below `floor`.
 *
 * @param changed fields in which the values are not the typed ones
 */
export function coherence(
  frame: Frame,
  v: Float64Array,
  halves: Float64Array,
  changed: readonly number[],
  floor: number,
): number {
  const { typed, absolute, stand, family } = frame
  let sum = 0
  for (let i = 0; i < identities.length; i++)
    sum += isAny(changed, takesPart[i]!) ? identityLog(frame, i, v, halves) : typed.identities[i]!
  if (changed.length === 1 && !absolute.includes(true)) {
    const field = changed[0]!
    const c = coordinateOf[field]!
    const most = typed.shape + typed.shapeGains[field]! + typed.core + (c < 0 ? 0 : typed.gains[c]!)
    const ofFamily = family ? familyLog(family, v) : 0
    if (sum + ofFamily + most < floor) return -Infinity
    y.set(stand.y)
    if (c >= 0) y[c] = one(frame, v, c)
    sum += ofFamily
    sum += isAny(changed, isShaping) ? shapeLog(frame, v) : typed.shape
  } else {
    if (family) sum += familyLog(family, v)
    sum += isAny(changed, isShaping) ? shapeLog(frame, v) : typed.shape
    if (sum + typed.most < floor) return -Infinity
    coordinatesOf(frame, v, y)
  }
  return sum + coreLog(frame.core, stand, y, floor - sum)
}

const isShaping = pointers.map((_, field) => shaping.includes(field))

/** By hand, as hundreds of candidates are asked. */
function isAny(fields: readonly number[], among: readonly boolean[]): boolean {
  for (let i = 0; i < fields.length; i++) if (among[fields[i]!]) return true
  return false
}

/** How well the record hangs together as typed. */
export function typedCoherence({ typed, family, values }: Frame): number {
  return (
    typed.identities.reduce((sum, one) => sum + one, typed.shape + typed.core) +
    (family ? familyLog(family, values) : 0)
  )
}
