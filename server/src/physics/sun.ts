import { clamp, degrees, radians } from './angles.ts'

/** Sun on a plane across its rays, mean over the year [W/m2]. @source G. Kopp, J. L. Lean, Geophysical Research Letters 38 (2011) L01706 */
export const solarConstant = 1361

/** The day of the year whose daily extraterrestrial sun is the month's mean, January first. @source S. A. Klein, Solar Energy 19 (1977) 325-329 */
export const meanDays = [17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344] as const

/** Days of the months of a common year, January first. */
export const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const

/**
 * Declination of the sun at noon, for the middle of a leap cycle around 2030; within 0.2° in any year from 2010 to 2050.
 *
 * @param day  of the year, 1 to 365
 * @returns    [°], north positive
 * @source The Astronomical Almanac, low-precision formulas for the sun; J. J. Michalsky, Solar Energy 40 (1988) 227-235
 */
export function declination(day: number): number {
  return degrees(Math.asin(Math.sin(obliquity) * Math.sin(eclipticLongitude(day))))
}

/**
 * Solar time less mean time at the same meridian, as `declination` for around 2030; within a quarter of a minute.
 *
 * @param day  of the year, 1 to 365
 * @returns    [min]
 * @source The Astronomical Almanac, low-precision formulas for the sun; J. J. Michalsky, Solar Energy 40 (1988) 227-235
 */
export function equationOfTime(day: number): number {
  const longitude = eclipticLongitude(day)
  const ascension = Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude))
  const turn = degrees(meanLongitude(day) - ascension) / 360
  return (turn - Math.round(turn)) * 1440
}

/**
 * Hour angle of the sun: 15° an hour, 0 at solar noon, negative in the morning.
 *
 * @param clock      standard time [h]
 * @param day        of the year
 * @param longitude  of the place [°], east positive
 * @param meridian   of the time zone [°], east positive
 * @returns          [°]
 * @source J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, 4th ed. (2013), section 1.5
 */
export function hourAngle(clock: number, day: number, longitude: number, meridian: number): number {
  return 15 * (clock - 12) + (longitude - meridian) + equationOfTime(day) / 4
}

export interface SunPosition {
  /** From straight up [°]; above 90 it is night. */
  readonly zenith: number
  /** By compass [°]: 0 north, 90 east, 180 south. */
  readonly azimuth: number
}

/**
 * Where the sun stands. Without refraction.
 *
 * @param latitude     [°], north positive
 * @param declination  [°]
 * @param hourAngle    [°], morning negative
 * @returns            the position
 * @source J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, 4th ed. (2013), eqs. 1.6.5 and 1.6.6
 */
export function sunPosition(latitude: number, declination: number, hourAngle: number): SunPosition {
  const phi = radians(latitude)
  const delta = radians(declination)
  const omega = radians(hourAngle)
  const up = Math.cos(phi) * Math.cos(delta) * Math.cos(omega) + Math.sin(phi) * Math.sin(delta)
  const east = -Math.cos(delta) * Math.sin(omega)
  const north = Math.cos(phi) * Math.sin(delta) - Math.sin(phi) * Math.cos(delta) * Math.cos(omega)
  const azimuth = degrees(Math.atan2(east, north))
  return { zenith: degrees(Math.acos(clamp(up, -1, 1))), azimuth: azimuth < 0 ? azimuth + 360 : azimuth }
}

/**
 * Hour angle of sunset: 0 in polar night, 180 in polar day.
 *
 *     cos w = -tan(latitude) tan(declination)
 *
 * @param latitude     [°], between -90 and 90
 * @param declination  [°]
 * @returns            [°]; the day is twice this over 15 hours long
 * @source J. A. Duffie, W. A. Beckman, 4th ed. (2013), eq. 1.6.10
 */
export function sunsetHourAngle(latitude: number, declination: number): number {
  return degrees(Math.acos(clamp(-Math.tan(radians(latitude)) * Math.tan(radians(declination)), -1, 1)))
}

/**
 * Extraterrestrial irradiance across the sun's rays on a day [W/m2].
 *
 *     Gon = constant (1 + 0.033 cos(360° n/365))
 *
 * @param day       n, of the year
 * @param constant  solar constant [W/m2]
 * @source J. A. Duffie, W. A. Beckman, 4th ed. (2013), eq. 1.4.1a
 */
export function extraterrestrialNormal(day: number, constant: number): number {
  return constant * (1 + 0.033 * Math.cos(radians((360 * day) / 365)))
}

/**
 * Extraterrestrial irradiation of a horizontal plane over a day [Wh/m2]; 0 in polar night.
 *
 * @param latitude  [°], north positive
 * @param day       of the year
 * @param constant  solar constant [W/m2]
 * @source J. A. Duffie, W. A. Beckman, 4th ed. (2013), eq. 1.10.3
 */
export function extraterrestrialDay(latitude: number, day: number, constant: number): number {
  const delta = declination(day)
  const sunset = sunsetHourAngle(latitude, delta)
  return horizontalIrradiation(latitude, delta, extraterrestrialNormal(day, constant), -sunset, sunset)
}

/**
 * Irradiation of a horizontal plane between two hour angles without an atmosphere [Wh/m2]; both must be by day.
 *
 * @param latitude     [°], north positive
 * @param declination  [°]
 * @param normal       across the rays [W/m2]
 * @param from         hour angle [°]
 * @param to           hour angle [°], not before
 * @source J. A. Duffie, W. A. Beckman, 4th ed. (2013), eq. 1.10.4
 */
export function horizontalIrradiation(
  latitude: number,
  declination: number,
  normal: number,
  from: number,
  to: number,
): number {
  const phi = radians(latitude)
  const delta = radians(declination)
  const swing = Math.cos(phi) * Math.cos(delta) * (Math.sin(radians(to)) - Math.sin(radians(from)))
  const level = radians(to - from) * Math.sin(phi) * Math.sin(delta)
  return (12 / Math.PI) * normal * (swing + level)
}

/** Days since noon of 1 January 2000 at noon of a day in a year of 2030's mean calendar. */
const sinceEpoch = (day: number) => 30 * 365.25 + 0.375 + day - 1

const obliquity = radians(23.435)
const meanLongitude = (day: number) => radians(280.46 + 0.9856474 * sinceEpoch(day))

function eclipticLongitude(day: number): number {
  const anomaly = radians(357.528 + 0.9856003 * sinceEpoch(day))
  return meanLongitude(day) + radians(1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly))
}
