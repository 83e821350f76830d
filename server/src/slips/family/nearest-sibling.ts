import { isSame } from '../../quantities/same.ts'
import type { SiblingCalibration } from '../model/calibration.ts'
import { index, valueAt, type Evidence } from '../evidence.ts'
import { electrical } from '../fields.ts'
import { grownLog, growing, offOf, rungOf, spreadOf, type Growing, type Rung } from './ladder.ts'

/** The siblings whose ratings are most like those of a panel, and what they let expect. */
export interface Nearest {
  /** The same model, written down again, once or more often. */
  readonly copies: readonly Evidence[]
  readonly ratings: readonly Rating[]
}

type Copied = keyof typeof copied

/** What is known of one rating. */
interface Rating {
  readonly name: Copied
  readonly field: number
  /** How often a copy has it alike. */
  readonly same: number
  /** The value in each copy. */
  readonly ofCopies: readonly number[]
  /** Of the nearest model of another power class. */
  readonly rung: Rung | undefined
}

/** What a copy should have alike; its Pmax may be the product of the others once and the power class once. */
export const copied = { vmp: index.vmp, imp: index.imp, voc: index.voc, isc: index.isc } as const
const names = Object.keys(copied) as Copied[]

export const isCopied = (field: number): boolean => names.some((name) => copied[name] === field)

export function isCopy(a: Evidence, b: Evidence): boolean {
  return electrical.filter((field) => isSame(valueAt(a, field) ?? NaN, valueAt(b, field) ?? NaN)).length >= 4
}

export function nearestOf(evidence: Evidence, siblings: readonly Evidence[], model: SiblingCalibration): Nearest {
  const copies = siblings.filter((one) => isCopy(evidence, one))
  const another = closest(
    evidence,
    siblings.filter((one) => !copies.includes(one)),
  )
  const ratings = names.map((name) => ({
    name,
    field: copied[name],
    same: model.copied[name],
    ofCopies: copies.map((one) => valueAt(one, copied[name]) ?? NaN),
    rung:
      another && name in growing
        ? rungOf(name as Growing, model.growths[name as Growing], evidence, another)
        : undefined,
  }))
  return { copies, ratings }
}

/** The largest difference is left out, so that one wrong rating does not decide. */
function closest(evidence: Evidence, siblings: readonly Evidence[]): Evidence | undefined {
  const distance = (other: Evidence) => {
    const all = electrical.map((field) => {
      const off = Math.abs(Math.log((valueAt(other, field) ?? NaN) / (valueAt(evidence, field) ?? NaN)))
      return Number.isNaN(off) ? 1 : off
    })
    return all.reduce((sum, off) => sum + off, 0) - Math.max(...all)
  }
  return [...siblings].sort((a, b) => distance(a) - distance(b))[0]
}

/** How much likelier the ratings are than without knowing the siblings, as logarithm. */
export function nearestLog({ ratings }: Nearest, v: Float64Array): number {
  return ratings.reduce((sum, rating) => sum + ratingLog(rating, v), 0)
}

/** Adds to the gain of each field what it would gain by agreeing with the siblings. */
export function addNearestGains({ ratings }: Nearest, v: Float64Array, gain: Float64Array): void {
  for (const rating of ratings) {
    const { field, rung } = rating
    const now = ratingLog(rating, v)
    const grown = rung ? grownLog(rung, 0) : 0
    gain[field]! += joint(rating, grown, 1) - now
    if (rung) gain[growing[rung.name].along]! += Math.max(0, joint(rating, grown, alike(rating, v)) - now)
  }
}

/** Where the growth leads to, and the wider spread about it; as logarithm of the change. */
export function grown({ ratings }: Nearest, v: Float64Array, field: number): { shift: number; sd: number } | null {
  const rung = ratings.find((rating) => rating.field === field)?.rung
  return rung ? { shift: -offOf(rung, v), sd: spreadOf(rung) } : null
}

function ratingLog(rating: Rating, v: Float64Array): number {
  const { rung } = rating
  return joint(rating, rung ? grownLog(rung, offOf(rung, v)) : 0, alike(rating, v))
}

/** How often one of several values would be alike by chance; estimated. */
export const chance = 0.02

/** A copy is as the others, or else as a model of another class lets expect; how often is calibrated. */
function joint({ same, ofCopies }: Rating, ofRung: number, shareAlike: number): number {
  if (ofCopies.length === 0) return ofRung
  return Math.log((1 - same) * Math.exp(ofRung) + (same * shareAlike) / chance)
}

const alike = ({ ofCopies, field }: Rating, v: Float64Array): number =>
  ofCopies.filter((value) => isSame(value, v[field]!)).length / Math.max(1, ofCopies.length)
