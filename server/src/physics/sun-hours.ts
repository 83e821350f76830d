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

/**
 * Hands out the sun of each day to its hours. The hours add up to the day; where the split would leave a beam below 0 or above
 * that outside the atmosphere, the diffuse part gives way.
 *
 * @param latitude  [°], north positive
 * @param days      see `meanSunDays`, `yearSunDays`, `syntheticSunDays`
 * @param air       12 numbers each [°C]
 * @source shares: see `globalShare` and `diffuseShare`
 */
export function sunHours(latitude: number, days: readonly SunDay[], air: MonthlyAir): SunHours {
  const field = () => new Float64Array(24 * days.length)
  const all = { days, normal: field(), diffuse: field(), global: field(), extraterrestrial: field() }
  const sky = { ...all, aroundSun: field(), horizon: field(), up: field(), east: field(), north: field(), air: field() }
  const sinPhi = Math.sin(radians(latitude))
  const cosPhi = Math.cos(radians(latitude))
  const temperatures = air.high.map((high, m) => hours.map((h) => airTemperature(h + 0.5, high, air.low[m]!)))
  const globals = new Float64Array(12)
  const diffuses = new Float64Array(12)

  days.forEach((day, d) => {
    const delta = declination(day.day)
    const sunset = sunsetHourAngle(latitude, delta)
    const beyond = extraterrestrialNormal(day.day, solarConstant)
    const sinDelta = Math.sin(radians(delta))
    const cosDelta = Math.cos(radians(delta))
    const shape = daySun(sunset)
    let globalSum = 0
    let diffuseSum = 0
    for (let h = 0; h < 12; h++) {
      const share = diffuseAt(shape, cosines[h]!)
      diffuses[h] = share
      diffuseSum += 2 * share
      globals[h] = globalOverDiffuse(shape, cosines[h]!) * share
      globalSum += 2 * globals[h]!
    }
    sky.extraterrestrial.fill(beyond, 24 * d, 24 * d + 24)
    sky.air.set(temperatures[day.month]!, 24 * d)
    // the afternoon mirrors the morning: half the work, which a cold start feels
    for (let h = 0; h < 12; h++) {
      const am = 24 * d + h
      const pm = 24 * d + 23 - h
      const up = cosPhi * cosDelta * cosines[h]! + sinPhi * sinDelta
      sky.up[am] = sky.up[pm] = up
      sky.east[am] = -cosDelta * sines[h]!
      sky.east[pm] = -sky.east[am]
      sky.north[am] = sky.north[pm] = cosPhi * sinDelta - sinPhi * cosDelta * cosines[h]!
      if (!(globals[h]! > 0 && globalSum > 0 && up > 0)) continue
      const global = (day.global * globals[h]!) / globalSum
      const diffuse = Math.min(global, (day.diffuse * diffuses[h]!) / diffuseSum)
      const normal = Math.min((global - diffuse) / up, beyond)
      sky.global[am] = sky.global[pm] = global
      sky.normal[am] = sky.normal[pm] = normal
      const scattered = (sky.diffuse[am] = sky.diffuse[pm] = global - normal * up)
      if (!(scattered > 0)) continue
      const bright = skyBrightness(normal, scattered, up, beyond)
      sky.aroundSun[am] = sky.aroundSun[pm] = bright.aroundSun
      sky.horizon[am] = sky.horizon[pm] = bright.horizon
    }
  })
  return sky
}

const hours = Array.from({ length: 24 }, (_, h) => h)
const angles = hours.map((h) => 15 * (h + 0.5 - 12))
const cosines = angles.map((angle) => Math.cos(radians(angle)))
const sines = angles.map((angle) => Math.sin(radians(angle)))
