import type { Bank } from './bank.ts'
import type { Sunny } from './sun.ts'
import { outcome, type Outcome, type Surroundings } from './year-battery.ts'

/** What came in through a year in which nothing was unmet [Wh], one for each sunny hour, and the lowest state of charge then. */
interface Enough {
  readonly passed: Float64Array
  readonly least: number
}

const enough = new WeakMap<Surroundings, Map<number, Enough>>()

/** So many years tell by their lowest states of charge whether the others are needed; of the others only what is unmet counts. */
export const few = 3

/** Whether at least a third of what may be used stays in the battery. */
export const isSpared = ({ depth }: Bank, least: number): boolean => 1 - (2 / 3) * depth < least

/**
 * What `outcome` gives, for many arrays on one battery: with at least as much sun in each hour as in a year in which nothing was
 * unmet nothing is unmet either, as more coming in never leaves less in a battery. The lowest state of charge is then
 * that of the other year, a lower bound: in the first few years of one that spared the battery.
 *
 * @param year  from 0; the sun of a year is the same for all arrays
 */
export function outcomeOf(around: Surroundings, year: number, sunny: Sunny, passed: Float64Array): Outcome {
  // what warms a battery in frost is a load that follows the sun
  if (around.frost) return outcome(around, sunny, passed)
  const byYear = enough.get(around) ?? new Map<number, Enough>()
  enough.set(around, byYear)
  const known = byYear.get(year)
  if (known && isAtLeast(passed, known.passed)) return { unserved: 0, least: known.least }
  const found = outcome(around, sunny, passed)
  if (found.unserved === 0 && (few <= year || isSpared(around.bank, found.least)))
    byYear.set(year, { passed: passed.slice(), least: found.least })
  return found
}

function isAtLeast(passed: Float64Array, other: Float64Array): boolean {
  for (let n = 0; n < passed.length; n++) if (passed[n]! < other[n]!) return false
  return true
}
