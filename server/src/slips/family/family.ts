import { isSame } from '../../quantities/same.ts'
import { calibration } from '../model/calibration.generated.ts'
import type { Calibration } from '../model/calibration.ts'
import { index, pointers, valueAt, type Evidence } from '../evidence.ts'
import { copiedFromOthers, sides } from '../fields.ts'
import { addNearestGains, isCopied, isCopy, nearestLog, nearestOf, type Nearest } from './nearest-sibling.ts'

/** What the siblings of a panel in its library let expect of it: models of one family in other power classes, and copies. */
export interface Family {
  readonly siblings: readonly Evidence[]
  /** Those of the same size: a larger panel has larger cells or more of them, and its voltage need not grow. */
  readonly ofSize: readonly Evidence[]
  /** Those of another size, which may differ in power, voltage and cells as well. */
  readonly ofOtherSizes: readonly Evidence[]
  readonly shared: readonly Shared[]
  readonly nearest: Nearest
}

/** A value that all models of a family carry. */
interface Shared {
  readonly field: number
  /** What siblings carry here that agree in all else, with the share of each. */
  readonly values: ReadonlyMap<number, number>
  /** How often true siblings agree, and how often others would by chance. */
  readonly same: number
  readonly chance: number
}

/**
 * What true siblings share, with the chance that a record that fits as well has just that value; the chance is estimated. How
 * often they agree is calibrated, among those with all other shared values, the area (0.4 %), Voc (6 %) and Pmax (15 %)
 * alike. Copies are models listed again with another value, so they agree less.
 */
export const sharedFields = { gamma: 0.12, beta: 0.12, alpha: 0.08, noct: 0.3, cells: 0.6 } as const
const names = Object.keys(sharedFields) as (keyof typeof sharedFields)[]
const fields = names.map((name) => index[name])

/**
 * @param others records that may be siblings; those that are none are left out
 * @param model the one that `findSlip` is given
 */
export function familyOf(
  evidence: Evidence,
  others: readonly Evidence[],
  { siblings }: Calibration = calibration,
): Family | null {
  const kin = kinOf(evidence, others)
  const ofOtherSizes = others.filter((other) => isOfOtherSize(evidence, other))
  if (kin.length === 0 && ofOtherSizes.length === 0) return null
  const ofSize = kin.flatMap(({ other, differs }) => (differs === index.length ? [] : [other]))
  return {
    siblings: kin.map(({ other }) => other),
    ofSize,
    ofOtherSizes,
    shared: names.flatMap((name) => {
      const field = index[name]
      const { same, ofCopies } = siblings.shared[name]
      const alike = kin.filter(({ differs }) => differs === -1 || differs === field).map(({ other }) => other)
      const values = new Map<number, number>()
      for (const other of alike) {
        const value = rounded(valueAt(other, field))
        values.set(value, (values.get(value) ?? 0) + 1 / alike.length)
      }
      const areCopies = alike.every((other) => isCopy(evidence, other))
      return valueAt(evidence, field) === undefined || alike.length === 0
        ? []
        : [{ field, values, same: areCopies ? ofCopies : same, chance: sharedFields[name] }]
    }),
    nearest: nearestOf(evidence, ofSize, siblings),
  }
}

/** Those that are siblings, each with the field in which it differs, -1 for none. */
export function kinOf(
  evidence: Evidence,
  others: readonly Evidence[],
): readonly { readonly other: Evidence; readonly differs: number }[] {
  return others.flatMap((other) => {
    const differing = differences(evidence, other)
    return differing && differing.length <= 1 ? [{ other, differs: differing[0] ?? -1 }] : []
  })
}

const areaOf = (one: Evidence) => (valueAt(one, index.length) ?? NaN) * (valueAt(one, index.width) ?? NaN)
const off = (x: number | undefined, y: number | undefined) => Math.abs(Math.log((x ?? NaN) / (y ?? NaN)))
const isOther = (x: string | undefined, y: string | undefined) => x !== undefined && y !== undefined && x !== y
const isOfAnother = (a: Evidence, b: Evidence) =>
  a.technology !== b.technology || isOther(a.maker, b.maker) || isOther(a.family, b.family)
const isOfSize = (a: Evidence, b: Evidence) => !(off(areaOf(a), areaOf(b)) > 0.004)

/** A panel of the family that is larger or smaller and has one side alike: the other may have been typed from it. */
const isOfOtherSize = (a: Evidence, b: Evidence): boolean =>
  !isOfAnother(a, b) && !isOfSize(a, b) && sides.some((side) => valueAt(a, side) === valueAt(b, side))

/** Fields in which a sibling differs: shared values, size, Voc and Pmax; null where too little is comparable. */
function differences(a: Evidence, b: Evidence): readonly number[] | null {
  if (isOfAnother(a, b)) return null
  let compared = 0
  const found: number[] = []
  for (const field of fields) {
    const x = valueAt(a, field)
    const y = valueAt(b, field)
    if (x === undefined && y === undefined) continue
    compared++
    if (x !== y && (x === undefined || y === undefined || rounded(x) !== rounded(y))) found.push(field)
  }
  if (!isOfSize(a, b)) found.push(index.length)
  if (off(valueAt(a, index.voc), valueAt(b, index.voc)) > 0.06) found.push(index.voc)
  if (off(valueAt(a, index.pmax), valueAt(b, index.pmax)) > 0.15) found.push(index.pmax)
  // a family that is named needs less likeness
  return compared < (a.family !== undefined && a.family === b.family ? 2 : 4) ? null : found
}

/** How well values agree with the siblings: logarithm of how much likelier they are than without knowing them. */
export function familyLog({ shared, nearest }: Family, v: Float64Array): number {
  let sum = 0
  for (const one of shared) sum += sharedLog(one, v[one.field]!)
  return sum + nearestLog(nearest, v)
}

/** What each field would gain by agreeing with the siblings. */
export function familyGains({ shared, nearest }: Family, v: Float64Array): Float64Array {
  const gain = new Float64Array(v.length)
  for (const one of shared) {
    const best = Math.max(...one.values.values())
    gain[one.field]! += Math.log(1 - one.same + (one.same * best) / one.chance) - sharedLog(one, v[one.field]!)
  }
  addNearestGains(nearest, v, gain)
  return gain
}

/**
 * How much likelier it is that another model's value stands here, where it is one that a sibling of another power class
 * or size has: another model's value is else any of about a hundred near ones, and families of several sizes often have one
 * side alike (estimated).
 */
export function anothersLog(family: Family | null, evidence: Evidence, field: number): number {
  if (!family || !lender(family, evidence, field)) return 0
  return sides.includes(field)
    ? Math.max(0, Math.log(5 / family.ofOtherSizes.length))
    : Math.log(100) - Math.log(family.ofSize.length)
}

/** A sibling of the same size and another power class that has just this value, and of another size that has just this side. */
export function lender({ ofSize, ofOtherSizes }: Family, evidence: Evidence, field: number): Evidence | undefined {
  const isAlike = (one: Evidence) => valueAt(one, field) === valueAt(evidence, field)
  if (sides.includes(field)) return ofOtherSizes.find(isAlike)
  if (!copiedFromOthers.includes(field)) return undefined
  const isOther = (one: Evidence) => field === index.pmax || valueAt(one, index.pmax) !== valueAt(evidence, index.pmax)
  return ofSize.find((one) => isOther(one) && isAlike(one))
}

/** Siblings that should have the same value in a field: all in what a family shares, copies in a rating. */
function peers({ shared, siblings, nearest }: Family, field: number): readonly Evidence[] {
  if (shared.some((one) => one.field === field)) return siblings
  return isCopied(field) ? nearest.copies : []
}

const has = (one: Evidence, field: number, value: number | undefined) =>
  isSame(valueAt(one, field) ?? NaN, value ?? NaN)

/** Siblings that should have the same value in a field, and have it. */
export function siblingsLike(family: Family, field: number, value: number): readonly Evidence[] {
  return peers(family, field).filter((one) => has(one, field, value))
}

/** Siblings that should have the same value in a field, and have another. */
export function siblingsOtherThan(family: Family, evidence: Evidence, field: number): readonly Evidence[] {
  return peers(family, field).filter((one) => !has(one, field, valueAt(evidence, field)))
}

/** The texts of a field as the siblings have it that should have the same, likeliest first. */
export function siblingTexts({ shared, siblings, nearest }: Family, field: number): readonly string[] {
  const textOf = (one: Evidence | undefined) => one?.readings[pointers[field]!]?.text ?? []
  if (isCopied(field)) return [...new Set(nearest.copies.flatMap(textOf))]
  const values = shared.find((one) => one.field === field)?.values ?? new Map<number, number>()
  return [...values]
    .sort((a, b) => b[1] - a[1])
    .flatMap(([value]) => textOf(siblings.find((one) => rounded(valueAt(one, field)) === value)))
}

const sharedLog = ({ values, same, chance }: Shared, value: number) =>
  Math.log(1 - same + (same * (values.get(rounded(value)) ?? 0)) / chance)

/** To seven digits: values are read from text, so that equal ones may differ in the last bit. */
function rounded(value: number | undefined): number {
  if (value === undefined || value === 0) return value ?? NaN
  const scale = 10 ** (6 - Math.floor(Math.log10(Math.abs(value))))
  return Math.round(value * scale) / scale
}
