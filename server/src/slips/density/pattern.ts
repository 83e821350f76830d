import type { GroupCalibration } from '../model/calibration.ts'
import { coordinates, features, usable } from './features.ts'
import { norm, oddNorm, oddTail } from './student.ts'

/** The part of a calibration that the core is made of. */
export type Joint = Pick<GroupCalibration, 'parts' | 'regular' | 'odd'>

/** What does not change between records that carry the same fields. */
export interface Pattern {
  /** Features as factors of the coordinates. */
  readonly rows: readonly Float64Array[]
  readonly size: number
  /** The rows that each coordinate is in, and its factors there. */
  readonly columns: readonly Column[]
  /** Coordinates that take part. */
  readonly formed: readonly boolean[]
  readonly components: readonly Component[]
  /** Shares with the constants of their densities. */
  readonly regular: number
  readonly odd: Float64Array
  /** What all coordinates come to that are odd just where the others expect them. */
  readonly mostOdd: number
}

export interface Column {
  readonly rows: Int32Array
  readonly factors: Float64Array
}

export interface Component {
  readonly mean: Float64Array
  readonly spread: Float64Array
  readonly weight: number
}

/** One for each set of fields that records carry, as working it out takes longer than to score a record. */
const known = new WeakMap<Joint, Map<string, Pattern>>()

export function patternOf(group: Joint, present: readonly boolean[]): Pattern {
  const patterns = known.get(group) ?? new Map<string, Pattern>()
  known.set(group, patterns)
  const key = present.join()
  const found = patterns.get(key) ?? makePattern(group, present)
  patterns.set(key, found)
  return found
}

function makePattern(group: Joint, present: readonly boolean[]): Pattern {
  const chosen = usable(present)
  const total = (factors: readonly number[], of: (i: number) => number) =>
    factors.reduce((sum, f, i) => (f ? sum + f * of(i) : sum), 0)
  const rows = chosen.map((factors) =>
    Float64Array.from({ length: coordinates }, (_, c) => total(factors, (i) => features[i]![c]!)),
  )
  const columns = Array.from({ length: coordinates }, (_, c): Column => {
    const own = Int32Array.from(rows.flatMap((row, i) => (row[c] ? [i] : [])))
    return { rows: own, factors: Float64Array.from(own, (i) => rows[i]![c]!) }
  })
  const size = chosen.length
  const odd = Float64Array.from(group.odd, (share) => share * norm(size - 1) * oddNorm)
  return {
    rows,
    size,
    columns,
    formed: columns.map((column) => column.rows.length > 0),
    components: group.parts.map(({ weight, mean, covariance }) => ({
      weight,
      mean: Float64Array.from(chosen, (factors) => total(factors, (i) => mean[i]!)),
      spread: Float64Array.from(
        chosen.flatMap((p) => chosen.map((q) => total(p, (a) => total(q, (b) => covariance[a]![b]!)))),
      ),
    })),
    regular: group.regular * norm(size),
    odd,
    mostOdd: oddTail(0) * odd.reduce((sum, one, c) => (columns[c]!.rows.length > 0 ? sum + one : sum), 0),
  }
}
