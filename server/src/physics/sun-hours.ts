import { airTemperature } from './air.ts'
import { radians } from './angles.ts'
import { daySun, diffuseAt, globalOverDiffuse } from './diffuse.ts'
import { skyBrightness } from './perez.ts'
import { declination, extraterrestrialNormal, solarConstant, sunsetHourAngle } from './sun.ts'
import type { SunDay } from './sun-days.ts'

/**
 * Sun and air of every hour of a list of days, all that does not depend on a panel; so several arrays share it. Each array has
 * 24 numbers a day, by solar time; the values are means over the hour, the sun's place that at its middle.
 */
export interface SunHours {
  readonly days: readonly SunDay[]
  /** Beam across its rays, diffuse and global on the horizontal, extraterrestrial across the rays [W/m2]. */
  readonly normal: Float64Array
  readonly diffuse: Float64Array
  readonly global: Float64Array
  readonly extraterrestrial: Float64Array
  /** Brightness of the sky around the sun and along the horizon, see `skyBrightness`. */
  readonly aroundSun: Float64Array
  readonly horizon: Float64Array
  /** Direction to the sun, a unit vector; `up` is the cosine of the zenith angle. */
  readonly up: Float64Array
  readonly east: Float64Array
  readonly north: Float64Array
  /** Air temperature [°C]. */
  readonly air: Float64Array
}

/** Mean daily extremes of the air by month, January first [°C]. */
export interface MonthlyAir {
  readonly high: readonly number[]
  readonly low: readonly number[]
}

/** What years at one place have alike, whatever their weather: the sun's course, and the air. */
export type Course = Pick<SunHours, 'extraterrestrial' | 'up' | 'east' | 'north' | 'air'> & {
  /** Shares of a day's global and diffuse sun, which add up to 1 over the hours in which the sun is up. */
  readonly globalShare: Float64Array
  readonly diffuseShare: Float64Array
}

/**
 * The sun's course through a list of days, and the air.
 *
 * @param latitude  [°], north positive
 * @param days      only their day of the year and their month count
 * @param air       12 numbers each [°C]
 * @source shares: see `globalShare` and `diffuseShare`
 */
export function courseOf(
  latitude: number,
  days: readonly Pick<SunDay, 'day' | 'month'>[],
  { high, low }: MonthlyAir,
): Course {
  const field = () => new Float64Array(24 * days.length)
  const course = { extraterrestrial: field(), up: field(), east: field(), north: field(), air: field() }
  const shares = { globalShare: field(), diffuseShare: field() }
  const sinPhi = Math.sin(radians(latitude))
  const cosPhi = Math.cos(radians(latitude))
  const temperatures = high.map((most, m) => hours.map((h) => airTemperature(h + 0.5, most, low[m]!)))

  days.forEach(({ day, month }, d) => {
    const delta = declination(day)
    const sinDelta = Math.sin(radians(delta))
    const cosDelta = Math.cos(radians(delta))
    const shape = daySun(sunsetHourAngle(latitude, delta))
    course.extraterrestrial.fill(extraterrestrialNormal(day, solarConstant), 24 * d, 24 * d + 24)
    course.air.set(temperatures[month]!, 24 * d)
    let globalSum = 0
    let diffuseSum = 0
    for (let h = 0; h < 24; h++) {
      const at = 24 * d + h
      course.up[at] = cosPhi * cosDelta * cosines[h]! + sinPhi * sinDelta
      course.east[at] = -cosDelta * sines[h]!
      course.north[at] = cosPhi * sinDelta - sinPhi * cosDelta * cosines[h]!
      const diffuse = (shares.diffuseShare[at] = diffuseAt(shape, cosines[h]!))
      const global = (shares.globalShare[at] = globalOverDiffuse(shape, cosines[h]!) * diffuse)
      diffuseSum += diffuse
      globalSum += global
    }
    for (let at = 24 * d; at < 24 * d + 24; at++) {
      const isUp = globalSum > 0 && course.up[at]! > 0
      shares.diffuseShare[at] = isUp ? shares.diffuseShare[at]! / diffuseSum : 0
      shares.globalShare[at] = isUp ? shares.globalShare[at]! / globalSum : 0
    }
  })
  return { ...course, ...shares }
}

/**
 * Hands out the sun of each day to its hours. The hours add up to the day; where the split would leave a beam below 0 or above
 * that outside the atmosphere, the diffuse part gives way.
 *
 * @param course  of the same days
 * @param days    see `meanSunDays`, `yearSunDays`, `syntheticSunDays`
 */
export function sunOnCourse(course: Course, days: readonly SunDay[]): SunHours {
  const field = () => new Float64Array(24 * days.length)
  const all = { normal: field(), diffuse: field(), global: field(), aroundSun: field(), horizon: field() }
  const { extraterrestrial, up, east, north, air, globalShare, diffuseShare } = course
  days.forEach((day, d) => {
    // the afternoon mirrors the morning: half the work, which a cold start feels
    for (let am = 24 * d, pm = am + 23; am < pm; am++, pm--) {
      if (!(globalShare[am]! > 0)) continue
      const global = day.global * globalShare[am]!
      const diffuse = Math.min(global, day.diffuse * diffuseShare[am]!)
      const normal = Math.min((global - diffuse) / up[am]!, extraterrestrial[am]!)
      all.global[am] = all.global[pm] = global
      all.normal[am] = all.normal[pm] = normal
      const scattered = (all.diffuse[am] = all.diffuse[pm] = global - normal * up[am]!)
      if (!(scattered > 0)) continue
      const bright = skyBrightness(normal, scattered, up[am]!, extraterrestrial[am]!)
      all.aroundSun[am] = all.aroundSun[pm] = bright.aroundSun
      all.horizon[am] = all.horizon[pm] = bright.horizon
    }
  })
  return { days, ...all, extraterrestrial, up, east, north, air }
}

/** Both in one: the hours of a list of days at a latitude, see `courseOf` and `sunOnCourse`. */
export function sunHours(latitude: number, days: readonly SunDay[], air: MonthlyAir): SunHours {
  return sunOnCourse(courseOf(latitude, days, air), days)
}

const hours = Array.from({ length: 24 }, (_, h) => h)
const angles = hours.map((h) => 15 * (h + 0.5 - 12))
const cosines = angles.map((angle) => Math.cos(radians(angle)))
const sines = angles.map((angle) => Math.sin(radians(angle)))
