import { diffuseMonth } from './diffuse.ts'
import { declination, extraterrestrialDay, meanDays, monthDays, solarConstant, sunsetHourAngle } from './sun.ts'

/** The sun of one day on the horizontal. */
export interface SunDay {
  /** Of the year, 1 to 365. */
  readonly day: number
  /** 0 January to 11 December. */
  readonly month: number
  /** Global and, of it, diffuse [Wh/m2]. */
  readonly global: number
  readonly diffuse: number
}

/**
 * The mean day of each month: 12 days that stand for the year.
 *
 * @param latitude  [°], north positive
 * @param sun       mean daily global sun on the horizontal, January first [Wh/m2], 12 numbers
 * @source mean days: S. A. Klein, Solar Energy 19 (1977) 325-329; diffuse: see `diffuseMonth`
 */
export function meanSunDays(latitude: number, sun: readonly number[]): SunDay[] {
  return meanDays.map((day, month) => ({ day, month, global: sun[month]!, diffuse: diffuseOf(latitude, sun, month) }))
}

/**
 * All 365 days of a year without weather: within a month every day has the same clearness, and the mean is the month's.
 *
 * @param latitude  [°], north positive
 * @param sun       mean daily global sun on the horizontal, January first [Wh/m2], 12 numbers
 */
export function yearSunDays(latitude: number, sun: readonly number[]): SunDay[] {
  return monthDays.flatMap((_, month) => {
    const days = daysOf(month)
    const above = days.map((day) => extraterrestrialDay(latitude, day, solarConstant))
    const total = above.reduce((sum, h) => sum + h, 0)
    const share = total > 0 ? (sun[month]! * days.length) / total : 0
    const diffuse = diffuseOf(latitude, sun, month) / (sun[month]! || 1)
    return days.map((day, k) => ({ day, month, global: share * above[k]!, diffuse: share * above[k]! * diffuse }))
  })
}

/**
 * Clearness of each month: its sun over that above the atmosphere on its mean day. 0 in polar night.
 *
 * @param latitude  [°], north positive
 * @param sun       mean daily global sun on the horizontal, January first [Wh/m2]
 */
export function monthlyClearness(latitude: number, sun: readonly number[]): number[] {
  return meanDays.map((day, month) => {
    const above = extraterrestrialDay(latitude, day, solarConstant)
    return above > 0 ? sun[month]! / above : 0
  })
}

/** Days of the year that a month has, 0 January. */
export function daysOf(month: number): number[] {
  const before = monthDays.slice(0, month).reduce<number>((sum, days) => sum + days, 0)
  return Array.from({ length: monthDays[month]! }, (_, k) => before + k + 1)
}

function diffuseOf(latitude: number, sun: readonly number[], month: number): number {
  const clearness = monthlyClearness(latitude, sun)[month]!
  return sun[month]! * diffuseMonth(clearness, sunsetHourAngle(latitude, declination(meanDays[month]!)))
}
