import type { MonthlyAir } from '../../../server/src/physics/sun-hours.ts'

/** Hours of a weather file; 24 make a day, as in local standard time. */
export interface WeatherHours {
  /** 0 January to 11 December. */
  readonly month: ArrayLike<number>
  /** Global sun on the horizontal [Wh/m2]. */
  readonly global: ArrayLike<number>
  /** Air temperature [°C]. */
  readonly air: ArrayLike<number>
}

export interface MonthlyWeather {
  /** Mean daily sun, January first [Wh/m2]; NaN for a month without a day. */
  readonly sun: number[]
  /** Means of the daily highest and lowest [°C]. */
  readonly air: MonthlyAir
  readonly coldest: number
  readonly hottest: number
}

/**
 * Monthly means and the extremes of hourly weather. Hours of an incomplete last day are left out of the means.
 *
 * @param hours  any whole days, in any order of months
 */
export function monthlyWeather({ month, global, air }: WeatherHours): MonthlyWeather {
  const days = new Array<number>(12).fill(0)
  const sun = new Array<number>(12).fill(0)
  const high = new Array<number>(12).fill(0)
  const low = new Array<number>(12).fill(0)
  let coldest = Infinity
  let hottest = -Infinity
  for (let start = 0; start + 24 <= month.length; start += 24) {
    const m = month[start]!
    let top = -Infinity
    let bottom = Infinity
    for (let at = start; at < start + 24; at++) {
      sun[m]! += global[at]!
      top = Math.max(top, air[at]!)
      bottom = Math.min(bottom, air[at]!)
    }
    days[m]!++
    high[m]! += top
    low[m]! += bottom
    coldest = Math.min(coldest, bottom)
    hottest = Math.max(hottest, top)
  }
  const mean = (total: number, m: number) => total / days[m]!
  return { sun: sun.map(mean), air: { high: high.map(mean), low: low.map(mean) }, coldest, hottest }
}
