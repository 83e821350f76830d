import { isSame } from '../quantities/same.ts'
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

/** A rating of a sibling beside the rating that it grows with. */
interface Rating {
  readonly growth: Growth
  readonly value: number
  readonly beside: number
}

interface Growth {
  readonly place: number
  readonly along: number
  /** The exponent. */
  readonly by: number
  /** Share and standard deviation of two normals about the growth; what is left is as without a sibling. */
  readonly spread: readonly (readonly [share: number, sd: number])[]
}

/**
 * How ratings grow from one class of a family to the next: Imp with Pmax, and each open or short value with the one at
 * maximum power, as the ratio of the two hardly differs within a family. Vmp is not among them, as it is Pmax over Imp.
 *
 * By maximum likelihood from 2 222 pairs of open ratings, as two normals and the wide density of `grownLog`. The narrow
 * spreads of Isc and Voc, in which pairs with the very same values show, are judged to be 0.001, as two roundings are.
 */
const growths: readonly Growth[] = [
  {
    place: at.imp,
    along: at.pmax,
    by: 0.61,
    spread: [
      [0.44, 0.0018],
      [0.52, 0.009],
    ],
  },
  {
    place: at.isc,
    along: at.imp,
    by: 0.93,
    spread: [
      [0.35, 0.001],
      [0.56, 0.0066],
    ],
  },
  {
    place: at.voc,
    along: at.vmp,
    by: 0.83,
    spread: [
      [0.33, 0.001],
      [0.6, 0.0056],
    ],
  },
]

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
  const ratings = growths.flatMap((growth) => {
    const [value, beside] = [valueAt(nearest, growth.place), valueAt(nearest, growth.along)]
    const isTold = [growth.place, growth.along].every((place) => valueAt(evidence, place) !== undefined)
    return value && beside && isTold ? [{ growth, value, beside }] : []
  })
  return { isCopy: false, ratings }
}

/** How much likelier the ratings are than without knowing the sibling, as logarithm. */
export function nearestLog(nearest: Nearest, v: Float64Array): number {
  let sum = 0
  if (nearest.isCopy) for (const place of copied) sum += copiedLog(nearest, v, place)
  else for (const one of nearest.ratings) sum += grownLog(one.growth, offOf(one, v))
  return sum
}

/** Adds to the gain of each field what it would gain by agreeing with the sibling. */
export function addNearestGains(nearest: Nearest, v: Float64Array, gain: Float64Array): void {
  if (nearest.isCopy) for (const place of copied) gain[place]! += best - copiedLog(nearest, v, place)
  else
    for (const one of nearest.ratings) {
      const more = Math.max(0, grownLog(one.growth, 0) - grownLog(one.growth, offOf(one, v)))
      gain[one.growth.place]! += more
      gain[one.growth.along]! += more
    }
}

/** Where the growth leads to, and the wider spread about it; as logarithm of the change. */
export function grown(nearest: Nearest, v: Float64Array, place: number): { shift: number; sd: number } | null {
  const rating = nearest.isCopy ? undefined : nearest.ratings.find(({ growth }) => growth.place === place)
  return rating ? { shift: -offOf(rating, v), sd: rating.growth.spread[1]![1] } : null
}

const offOf = ({ growth, value, beside }: Rating, v: Float64Array) =>
  Math.log(v[growth.place]! / value) - growth.by * Math.log(v[growth.along]! / beside)

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

/** Against a wide density, which stands for what is known without a sibling; its width of 2 % is judged. */
function grownLog({ spread }: Growth, d: number): number {
  const wide = 1 / (Math.PI * 0.02 * (1 + (d / 0.02) ** 2))
  let near = 0
  let far = 1
  for (const [share, sd] of spread) {
    near += (share * Math.exp((-d * d) / (2 * sd * sd))) / (sd * Math.sqrt(2 * Math.PI))
    far -= share
  }
  return Math.log(Number.isFinite(d) ? far + near / wide : far)
}
