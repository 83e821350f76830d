import { extraterrestrialDay, meanDays, solarConstant } from './sun.ts'

/** Sun and air of a place of which only the latitude is known. */
export interface AssumedClimate {
  /** 12 numbers: solar energy on the horizontal on a mean day of the month [kWh/m2]. */
  readonly sun: readonly number[]
  /** 12 numbers each: mean of the days' highest and lowest air temperature [°C]. */
  readonly meanHigh: readonly number[]
  readonly meanLow: readonly number[]
  readonly coldest: number
  readonly hottest: number
}

/** The month that is the warmest in the north, counted from 0 in middles of months: late July. */
const warmest = 6.7

/**
 * A climate guessed from the latitude alone, for a first look where nothing better is at hand. The clearness of the sky is
 * 0.52 in the tropics and swings between 0.40 in winter and 0.54 in summer beyond 30 degrees; the yearly mean temperature
 * falls with the square of the latitude. A real place can be off by a third in a month's sun and by 10 K.
 *
 * @param latitude  degrees north, -66 to 66; beyond, the sun of midwinter is gone and the guess is worth little
 * @returns         12 months, January first
 * @source common practice, no source: round figures between published station means of mid-latitude coasts
 */
export function assumedClimate(latitude: number): AssumedClimate {
  const size = Math.abs(latitude)
  const beyondTropics = Math.min(1, Math.max(0, (size - 15) / 15))
  const mean = 27 - 0.0068 * size ** 2
  const swing = Math.max(1, 0.25 * size - 2)
  const season = Array.from(
    { length: 12 },
    (_, m) => Math.sign(latitude || 1) * Math.cos(((m + 0.5 - warmest) / 12) * 2 * Math.PI),
  )
  const clearness = season.map((s) => 0.52 - beyondTropics * (0.05 - 0.07 * s))
  return {
    sun: meanDays.map((day, m) => (clearness[m]! * extraterrestrialDay(latitude, day, solarConstant)) / 1000),
    meanHigh: season.map((s) => mean + swing * s + 4),
    meanLow: season.map((s) => mean + swing * s - 4),
    coldest: mean - swing - 4 - 6 - 0.15 * size,
    hottest: mean + swing + 4 + 9,
  }
}
