import { radians } from './angles.ts'
import { skyBrightness } from './perez.ts'
import { declination, extraterrestrialNormal, hourAngle, solarConstant, sunPosition } from './sun.ts'
import type { SunHours } from './sun-hours.ts'

/** Hours of one year of weather in order, by local standard time, each a mean or sum over the hour. */
export interface WeatherYear {
  /** [°], north and east positive */
  readonly latitude: number
  readonly longitude: number
  /** Of local standard time, hours before Greenwich, east positive. */
  readonly zone: number
  /** 0 January to 11 December; 24 hours make a day, and the first day is 1 January. */
  readonly month: ArrayLike<number>
  /** Global and diffuse sun on the horizontal, beam across its rays [Wh/m2]. */
  readonly global: ArrayLike<number>
  readonly diffuse: ArrayLike<number>
  readonly normal: ArrayLike<number>
  /** Air temperature [°C]. */
  readonly air: ArrayLike<number>
}

/**
 * The sun and air of a weather year as they were, hours of an incomplete last day left out. The sun's place is that at the
 * middle of the hour; where it is below the horizon then, what the hour had counts as diffuse.
 */
export function weatherSky(year: WeatherYear): SunHours {
  const { latitude, longitude, zone, month } = year
  const count = Math.floor(month.length / 24)
  const field = () => new Float64Array(24 * count)
  const all = { normal: field(), diffuse: field(), global: field(), extraterrestrial: field() }
  const sky = { ...all, aroundSun: field(), horizon: field(), up: field(), east: field(), north: field(), air: field() }
  const days = Array.from({ length: count }, (_, d) => ({
    day: Math.min(365, d + 1),
    month: month[24 * d]!,
    global: sum(year.global, 24 * d),
    diffuse: sum(year.diffuse, 24 * d),
  }))
  days.forEach(({ day }, d) => {
    const delta = declination(day)
    const beyond = extraterrestrialNormal(day, solarConstant)
    for (let hour = 0; hour < 24; hour++) {
      const at = 24 * d + hour
      const { zenith, azimuth } = sunPosition(latitude, delta, hourAngle(hour + 0.5, day, longitude, 15 * zone))
      const [z, a] = [radians(zenith), radians(azimuth)]
      const up = Math.cos(z)
      sky.up[at] = up
      sky.east[at] = Math.sin(z) * Math.sin(a)
      sky.north[at] = Math.sin(z) * Math.cos(a)
      sky.extraterrestrial[at] = beyond
      sky.air[at] = year.air[at]!
      const global = (sky.global[at] = Math.max(0, year.global[at]!))
      const isUp = up > 0.01
      const diffuse = (sky.diffuse[at] = isUp ? Math.min(global, Math.max(0, year.diffuse[at]!)) : global)
      const normal = (sky.normal[at] = isUp ? Math.min(beyond, Math.max(0, year.normal[at]!)) : 0)
      if (!isUp || !(diffuse > 0)) continue
      const bright = skyBrightness(normal, diffuse, up, beyond)
      sky.aroundSun[at] = bright.aroundSun
      sky.horizon[at] = bright.horizon
    }
  })
  return { days, ...sky }
}

function sum(list: ArrayLike<number>, from: number): number {
  let total = 0
  for (let at = from; at < from + 24; at++) total += list[at]!
  return total
}
