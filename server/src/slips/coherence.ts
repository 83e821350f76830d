import type { CalibratedPart, GroupCalibration, Mixture } from './calibration.ts'
import { coreLog, coreOf, expected, standOf, type Core, type Stand } from './core.ts'
import { at, pointers, type Evidence } from './evidence.ts'
import { familyLog, type Family } from './family.ts'
import { coefficients } from './fields.ts'
import { coordinate, coordinates } from './features.ts'
import { isAbsolute } from './printed.ts'

const y = new Float64Array(coordinates)

/** A record as numbers, and the model that they are held against. */
export interface Frame {
  readonly group: GroupCalibration
  readonly printedEfficiency: Mixture
  readonly values: Float64Array
  readonly halves: Float64Array
  readonly present: readonly boolean[]
  /** Coefficients typed per module, by place. */
  readonly absolute: readonly boolean[]
  /** Numbers that end with their decimal point. */
  readonly unfinished: readonly boolean[]
  readonly core: Core
  readonly stand: Stand
  /** Cells are counted alike in this group, and a count is given. */
  readonly counted: boolean
  readonly family: Family | null
  /** What a change of other fields leaves as it is. */
  readonly typed: Typed
}

interface Typed {
  readonly shape: number
  readonly shapeGains: Float64Array
  readonly identities: readonly number[]
  readonly core: number
  /** What the core would gain if each coordinate were as the others expect it. */
  readonly gains: Float64Array
}

export function frameOf(
  evidence: Evidence,
  calibrated: GroupCalibration,
  countsCells: boolean,
  family: Family | null,
): Frame {
  const known = evidence.construction === undefined || evidence.construction === 'rigid'
  const group = known ? calibrated : widened(calibrated)
  const values = new Float64Array(pointers.length).fill(NaN)
  const halves = new Float64Array(pointers.length)
  const present: boolean[] = []
  const absolute: boolean[] = []
  const unfinished: boolean[] = []
  pointers.forEach((pointer, place) => {
    const reading = evidence.readings[pointer]
    present.push(reading !== undefined)
    absolute.push(reading !== undefined && coefficients.includes(place) && isAbsolute(reading.text))
    unfinished.push(reading !== undefined && /\d[.,](?!\d)/.test(reading.text))
    if (!reading) return
    values[place] = reading.value
    halves[place] = reading.half
  })
  const counted = countsCells && present[at.cells]!
  const printedEfficiency = known ? efficiencyOfFramed : efficiencyOfOthers
  const partial = { group, printedEfficiency, values, halves, present, absolute, unfinished, counted, family }
  const formed = sources.map((places, c) => (c === coordinate.cells ? counted : places.every((p) => present[p])))
  const roundings = new Float64Array(coordinates)
  sources.forEach((places, c) => {
    if (c !== coordinate.cells) for (const place of places) roundings[c]! += rounding(partial, place)
  })
  const core = coreOf(group, formed, roundings)
  coordinatesOf(partial, values, y)
  const stand = standOf(core, y)
  const parts = identities.map((_, i) => identityLog(partial, i, values, halves))
  const now = coreLog(core, stand, stand.y)
  const gains = new Float64Array(coordinates)
  for (let c = 0; c < coordinates; c++) if (formed[c]) gains[c] = Math.max(0, expected(core, stand, c).log - now)
  const shape = shapeLog(partial, values)
  const typed = { shape, shapeGains: shapeGains(partial, values), identities: parts, core: now, gains }
  return { ...partial, core, stand, typed }
}

/** Flexible and folding panels are hardly in the open ratings, so that half as much spread again is granted to them. */
function widened(group: GroupCalibration): GroupCalibration {
  const found = wide.get(group) ?? { ...group, parts: group.parts.map(wider) }
  wide.set(group, found)
  return found
}

const wide = new WeakMap<GroupCalibration, GroupCalibration>()

const wider = ({ covariance, ...part }: CalibratedPart): CalibratedPart => ({
  ...part,
  covariance: covariance.map((line) => line.map((v) => 2.25 * v)),
})

/** The fields behind each coordinate. */
export const sources: readonly (readonly number[])[] = [
  [at.cells],
  [at.length, at.width],
  [at.voc],
  [at.isc],
  [at.vmp],
  [at.imp],
  [at.gamma],
  [at.beta],
  [at.alpha],
  [at.noct],
  [at.noctImp],
  [at.noctVmp],
]

const rawPlaces: readonly number[] = [at.gamma, at.beta, at.alpha, at.noct]

/** Variance by rounding, of the logarithm where the coordinate is one; no coarser than 3 %, so that gross slips still show. */
function rounding({ values, halves, absolute }: Pick<Frame, 'values' | 'halves' | 'absolute'>, place: number): number {
  const half = halves[place]!
  if (!rawPlaces.includes(place)) return relative(half, values[place]!) ** 2 / 3
  if (place === at.noct) return Math.min(half, 1) ** 2 / 3
  const share = half / (absolute[place] ? Math.abs(values[whole(place)]!) : 1)
  return Math.min(100 * share, 0.01) ** 2 / 3
}

const relative = (half: number, value: number) => Math.min(half / Math.max(Math.abs(value), 1e-9), 0.03)

/** What an absolute coefficient is a share of. */
const whole = (place: number) => (place === at.gamma ? at.pmax : place === at.beta ? at.voc : at.isc)

type Absolute = Pick<Frame, 'absolute'>

const ln = (x: number) => (x > 1e-9 ? Math.log(x) : -20)

function coordinatesOf(frame: Absolute, v: Float64Array, y: Float64Array): void {
  for (let c = 0; c < coordinates; c++) y[c] = one(frame, v, c)
}

/** The coordinate that a place is behind; -1 for what only identities hold. */
const coordinateOf = (place: number): number => sources.findIndex((places) => places.includes(place))

function one(frame: Absolute, v: Float64Array, c: number): number {
  const place = sources[c]![0]!
  if (c === coordinate.area) return ln(v[at.length]!) + ln(v[at.width]!)
  if (c === coordinate.noct) return v[place]!
  return coefficients.includes(place) ? percent(frame, v, place) : ln(v[place]!)
}

const percent = (frame: Absolute, v: Float64Array, place: number) =>
  (100 * v[place]!) / (frame.absolute[place] ? v[whole(place)]! : 1)

/** The arithmetic that a record repeats, as logarithms that are 0 where it agrees, and the fields in it. */
export const identities = [
  { plus: [at.vmp, at.imp], minus: [at.pmax] },
  { plus: [at.efficiency, at.length, at.width], minus: [at.pmax] },
  { plus: [at.noctVmp, at.noctImp], minus: [at.noctPmax] },
] as const

/** Whether a place is in an identity, by identity. */
const takesPart = identities.map(({ plus, minus }) =>
  pointers.map((_, p) => [...plus, ...minus].some((one) => one === p)),
)

/**
 * Printed efficiencies and NOCT powers that are not the plain product: judged, since the open ratings carry neither. Sheets of
 * flexible panels often print the efficiency of the cells; those of framed modules hardly ever.
 */
const printedEfficiency = (ofCells: number): Mixture => [
  [0.9875 - ofCells, 0, 0.0015],
  [0.012, 0, 0.006],
  [ofCells, 0.07, 0.05],
  [0.0005, 0, 0.3],
]
const efficiencyOfFramed = printedEfficiency(0.0001)
const efficiencyOfOthers = printedEfficiency(0.004)
const noctProduct: Mixture = [
  [0.95, 0, 0.002],
  [0.045, 0, 0.006],
  [0.005, 0, 0.03],
]

type Arithmetic = Pick<Frame, 'group' | 'printedEfficiency' | 'present'>

/** Logarithm of an identity's density in one record; 0 where a part is missing. */
function identityLog(frame: Arithmetic, which: number, v: Float64Array, halves: Float64Array): number {
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

/** Far tails are flat, as whatever goes wrong there has no scale. */
function mixtureLog(mixture: Mixture, x: number, variance = 0): number {
  let density = 1e-6 / (1 + x * x)
  for (const [weight, mean, sd] of mixture) {
    const square = sd * sd + variance
    density += (weight * Math.exp((-(x - mean) * (x - mean)) / (2 * square))) / Math.sqrt(2 * Math.PI * square)
  }
  return Math.log(density)
}

/** ln(area [m2]) of panels whose cells are not counted: from a flexible 10 W panel to the largest glass. */
const anyArea: Mixture = [
  [0.7, Math.log(1.7), 0.35],
  [0.3, Math.log(0.9), 0.9],
]

const usualCounts: Readonly<Record<number, number>> = {
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

type Shape = Pick<Frame, 'group' | 'present' | 'counted'>

/** How likely the shape is: cell area, sides, cell count. */
function shapeLog(shape: Shape, v: Float64Array): number {
  const sum = countLog(shape, v)
  return shape.present[at.length] && shape.present[at.width] ? sum + aspectLog(shape, v) + areaLog(shape, v) : sum
}

const countLog = ({ counted }: Shape, v: Float64Array) =>
  counted ? Math.log(usualCounts[v[at.cells]!] ?? (Number.isInteger(v[at.cells]!) ? 0.001 : 1e-6)) : 0

function aspectLog({ group }: Shape, v: Float64Array): number {
  const aspect = ln(v[at.length]!) - ln(v[at.width]!)
  return mixtureLog(group.aspect, Math.abs(aspect)) + (aspect < 0 ? -2 : 0)
}

function areaLog({ group, counted }: Shape, v: Float64Array): number {
  const area = ln(v[at.length]!) + ln(v[at.width]!)
  return counted ? mixtureLog(group.cellArea, area - ln(v[at.cells]!)) : mixtureLog(anyArea, area)
}

/** What the shape could gain by another value, by place. */
function shapeGains(shape: Shape, v: Float64Array): Float64Array {
  const gains = new Float64Array(pointers.length)
  const isSized = shape.present[at.length] && shape.present[at.width]
  const ofArea = isSized ? peak(shape.counted ? shape.group.cellArea : anyArea) - areaLog(shape, v) : 0
  if (isSized) gains[at.length] = gains[at.width] = peak(shape.group.aspect) - aspectLog(shape, v) + ofArea
  if (shape.counted) gains[at.cells] = Math.log(usualCounts[60]!) - countLog(shape, v) + ofArea
  return gains
}

/** The most that a mixture reaches, to within a little. */
const peak = (mixture: Mixture) => Math.max(...mixture.map(([, mean]) => mixtureLog(mixture, mean)))

/**
 * How well a whole record hangs together: logarithm of its density; -Infinity where that is certainly below `floor`.
 *
 * @param changed places in which the values are not the typed ones
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
    sum += changed.some((place) => takesPart[i]![place]) ? identityLog(frame, i, v, halves) : typed.identities[i]!
  if (changed.length === 1 && !absolute.includes(true)) {
    const place = changed[0]!
    const c = coordinateOf(place)
    const most = typed.shape + typed.shapeGains[place]! + typed.core + (c < 0 ? 0 : typed.gains[c]!)
    const ofFamily = family ? familyLog(family, v) : 0
    if (sum + ofFamily + most < floor) return -Infinity
    y.set(stand.y)
    if (c >= 0) y[c] = one(frame, v, c)
    sum += ofFamily
  } else {
    if (family) sum += familyLog(family, v)
    coordinatesOf(frame, v, y)
  }
  sum += changed.some((place) => shaping.includes(place)) ? shapeLog(frame, v) : typed.shape
  return sum + coreLog(frame.core, stand, y)
}

/** How well the record hangs together as typed. */
export function typedCoherence({ typed, family, values }: Frame): number {
  return (
    typed.identities.reduce((sum, one) => sum + one, typed.shape + typed.core) +
    (family ? familyLog(family, values) : 0)
  )
}

const shaping: readonly number[] = [at.length, at.width, at.cells]

/**
 * What the arithmetic could gain by another value, by place: that it holds then. Where it holds already, a field loses by
 * another value, as slips that a check can tell change a number by more than `least`.
 */
export function identityGains(frame: Frame): Float64Array {
  const gains = new Float64Array(pointers.length)
  identities.forEach(({ plus, minus }, i) => {
    const found = disagreement(frame, i, frame.values, frame.halves)
    if (!found) return
    const { mixture, off, variance } = found
    const now = frame.typed.identities[i]!
    const nearby = [off - least, off + least].map((moved) => mixtureLog(mixture, moved, variance))
    const gain =
      Math.abs(off) < least
        ? Math.min(0, Math.max(...nearby) - now)
        : Math.max(0, mixtureLog(mixture, 0, variance) - now)
    for (const place of [...plus, ...minus]) gains[place]! += gain
  })
  return gains
}

const least = 0.015
