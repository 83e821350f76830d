import { isSame } from '../quantities/same.ts'
import { calibration } from './calibration.generated.ts'
import { at, valueAt, type Evidence } from './evidence.ts'
import { electrical } from './fields.ts'

/** The sibling whose ratings are most like those of a panel, and what they let expect. */
export type Nearest = Copies | InLadder

/** The same model, written down again, once or more often. */
interface Copies {
  readonly isCopy: true
  readonly copies: readonly Evidence[]
}

/** A model of another power class. */
interface InLadder {
  readonly isCopy: false
  readonly ratings: readonly Rating[]
}

type Growing = keyof typeof growing

/** A rating of a sibling beside the rating that it grows with. */
interface Rating {
  readonly name: Growing
  readonly value: number
  readonly beside: number
}

/**
 * What grows along with what from one class of a family to the next: Imp with Pmax, and each open or short value with the
 * one at maximum power, as the ratio of the two hardly differs within a family. Vmp is not among them, as it is Pmax over
 * Imp. How is calibrated, as a power about which two normals and the wide density of `grownLog` lie.
 */
export const growing = {
  imp: { place: at.imp, along: at.pmax },
  isc: { place: at.isc, along: at.imp },
  voc: { place: at.voc, along: at.vmp },
} as const
const names = Object.keys(growing) as Growing[]

/** What a copy should have alike; its Pmax may be the product of the others once and the power class once. */
export const copied: readonly number[] = [at.vmp, at.imp, at.voc, at.isc]

export function isCopy(a: Evidence, b: Evidence): boolean {
  return electrical.filter((place) => isSame(valueAt(a, place) ?? NaN, valueAt(b, place) ?? NaN)).length >= 4
}

/** The largest difference is left out, so that one wrong rating does not decide. */
export function nearestOf(evidence: Evidence, siblings: readonly Evidence[]): Nearest | null {
  const distance = (other: Evidence) => {
    const all = electrical.map((place) => {
      const off = Math.abs(Math.log((valueAt(other, place) ?? NaN) / (valueAt(evidence, place) ?? NaN)))
      return Number.isNaN(off) ? 1 : off
    })
    return all.reduce((sum, off) => sum + off, 0) - Math.max(...all)
  }
  const [nearest] = [...siblings].sort((a, b) => distance(a) - distance(b))
  if (!nearest) return null
  if (isCopy(evidence, nearest))
    return { isCopy: true, copies: siblings.filter((sibling) => isCopy(evidence, sibling)) }
  const ratings = names.flatMap((name) => {
    const { place, along } = growing[name]
    const [value, beside] = [valueAt(nearest, place), valueAt(nearest, along)]
    const isTold = [place, along].every((one) => valueAt(evidence, one) !== undefined)
    return value && beside && isTold ? [{ name, value, beside }] : []
  })
  return { isCopy: false, ratings }
}

/** How much likelier the ratings are than without knowing the sibling, as logarithm. */
export function nearestLog(nearest: Nearest, v: Float64Array): number {
  let sum = 0
  if (nearest.isCopy) for (const place of copied) sum += copiedLog(nearest, v, place)
  else for (const one of nearest.ratings) sum += grownLog(one.name, offOf(one, v))
  return sum
}

/** Adds to the gain of each field what it would gain by agreeing with the sibling. */
export function addNearestGains(nearest: Nearest, v: Float64Array, gain: Float64Array): void {
  if (nearest.isCopy) for (const place of copied) gain[place]! += best - copiedLog(nearest, v, place)
  else
    for (const one of nearest.ratings) {
      const more = Math.max(0, grownLog(one.name, 0) - grownLog(one.name, offOf(one, v)))
      gain[growing[one.name].place]! += more
      gain[growing[one.name].along]! += more
    }
}

/** Where the growth leads to, and the wider spread about it; as logarithm of the change. */
export function grown(nearest: Nearest, v: Float64Array, place: number): { shift: number; sd: number } | null {
  const rating = nearest.isCopy ? undefined : nearest.ratings.find(({ name }) => growing[name].place === place)
  return rating ? { shift: -offOf(rating, v), sd: spreadOf(rating.name)[1]![1] } : null
}

const spreadOf = (name: Growing) => calibration.siblings.growths[name].spread

function offOf({ name, value, beside }: Rating, v: Float64Array): number {
  const { place, along } = growing[name]
  return Math.log(v[place]! / value) - calibration.siblings.growths[name].by * Math.log(v[along]! / beside)
}

/**
 * Of 208 open modules that are listed twice with at least four of the five ratings alike, 6 have another Voc, 2 another Vmp,
 * none another current; 40 have another Pmax. How many values there are then is judged.
 */
const differs = 0.02
const chance = 0.02
const best = Math.log(differs + (1 - differs) / chance)

function copiedLog({ copies }: Copies, v: Float64Array, place: number): number {
  const alike = copies.filter((one) => isSame(valueAt(one, place) ?? NaN, v[place]!)).length
  return Math.log(differs + ((1 - differs) * alike) / copies.length / chance)
}

/** Width of the density that stands for what is known without a sibling; judged. */
export const wide = 0.02

/** Against the wide density. */
function grownLog(name: Growing, d: number): number {
  const alone = 1 / (Math.PI * wide * (1 + (d / wide) ** 2))
  let near = 0
  let far = 1
  for (const [share, sd] of spreadOf(name)) {
    near += (share * Math.exp((-d * d) / (2 * sd * sd))) / (sd * Math.sqrt(2 * Math.PI))
    far -= share
  }
  return Math.log(Number.isFinite(d) ? far + near / alone : far)
}
