import { transitions, type Transitions } from './clearness-transitions.ts'
import { diffuseDay } from './diffuse.ts'
import { random } from './random.ts'
import { declination, extraterrestrialDay, solarConstant, sunsetHourAngle } from './sun.ts'
import { daysOf, monthlyClearness, type SunDay } from './sun-days.ts'

/** No day is clearer than this: a clear sky gives 0.64 to 0.75 of the sun above the atmosphere, clean mountain air a little more. */
const clearest = 0.83

/**
 * Share of the days that are as clear as the day before whatever the transitions say [1]. With it, days of a month correlate as
 * they do in weather years of thirteen places, 0.26 on average; without it, by 0.22 (own, `npm run years`).
 */
const alike = 0.05

/**
 * A year of days as weather makes them, bad ones in runs, each month with the given mean.
 *
 * The clearness of a day follows from that of the day before by the transitions of the month's clearness, or is like it. The month's
 * days are then stretched so that their mean is the given one; none is made clearer than 0.83 of the sun above the atmosphere,
 * and where a month's mean itself is above that, all its days are alike.
 *
 * @param latitude  [°], north positive
 * @param sun       mean daily global sun on the horizontal, January first [Wh/m2], 12 numbers
 * @param seed      any whole number; the same seed gives the same year
 * @returns         365 days
 * @source R. J. Aguiar, M. Collares-Pereira, J. P. Conde, Solar Energy 40 (1988) 269-279; stretching and like days: own
 */
export function syntheticSunDays(latitude: number, sun: readonly number[], seed: number): SunDay[] {
  const clearness = monthlyClearness(latitude, sun)
  const year: SunDay[] = []
  let state = seed
  let k = clearness[11]!
  for (let month = 0; month < 12; month++) {
    const days = daysOf(month)
    const table = transitions.find((t) => clearness[month]! <= t.upTo)!
    const above = days.map((day) => extraterrestrialDay(latitude, day, solarConstant))
    const drawn = days.map(() => {
      const draw = random(state)
      state = draw.state
      return (k = nextClearness(k, table, draw.value))
    })
    const global = stretched(drawn, above, sun[month]! * days.length)
    days.forEach((day, i) => {
      const sunset = sunsetHourAngle(latitude, declination(day))
      const share = above[i]! > 0 ? diffuseDay(global[i]! / above[i]!, sunset) : 1
      year.push({ day, month, global: global[i]!, diffuse: Math.min(1, share) * global[i]! })
    })
  }
  return year
}

/** One draw gives both the step and the place within it. */
function nextClearness(k: number, { low, high, rows }: Transitions, draw: number): number {
  const width = (high - low) / 10
  const before = Math.min(9, Math.max(0, Math.floor((k - low) / width)))
  if (draw < alike) return low + (before + draw / alike) * width
  const row = rows[before]!
  let left = ((draw - alike) / (1 - alike)) * row.reduce((sum, chance) => sum + chance, 0)
  for (let step = 0; step < 10; step++) {
    const chance = row[step]!
    if (left < chance) return low + (step + left / chance) * width
    left -= chance
  }
  return high
}

/** Multiplies the days so that they add up to a total, without passing the clearest: from the clearest day down, what a capped day loses the others gain. */
function stretched(clearness: readonly number[], above: readonly number[], total: number): number[] {
  const most = above.reduce((sum, h) => sum + clearest * h, 0)
  if (total >= most) return above.map((h) => (most > 0 ? (total / most) * clearest * h : 0))
  let left = total
  let weight = clearness.reduce((sum, k, i) => sum + k * above[i]!, 0)
  for (const i of [...clearness.keys()].sort((a, b) => clearness[b]! - clearness[a]!)) {
    if (clearness[i]! * left <= clearest * weight) break
    left -= clearest * above[i]!
    weight -= clearness[i]! * above[i]!
  }
  return clearness.map((k, i) => Math.min((k * left) / weight, clearest) * above[i]!)
}
