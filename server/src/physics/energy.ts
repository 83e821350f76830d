import { radians } from './angles.ts'
import { diffuseModifiers } from './iam.ts'
import { powerAt, type PowerTable } from './power-table.ts'
import { leastCosine } from './perez.ts'
import { monthDays } from './sun.ts'
import type { SunHours } from './sun-hours.ts'
import type { Plane } from './transposition.ts'

/** How a panel is mounted. */
export interface Mount {
  readonly plane: Plane
  /** Ross coefficient [K m2/W]. */
  readonly k: number
  /** Share of all light lost to shading, 0 to 1. */
  readonly shading: number
  /** Reflectance of the ground [1]. */
  readonly albedo: number
  /** Angular loss coefficient of the face [1], see `beamModifier`. */
  readonly ar: number
}

export interface Energy {
  /** Power of each hour, in the order of the sun's hours [W], which over an hour is as many Wh. */
  readonly hours: Float64Array
  /** Mean of each month [Wh/day], January first; 0 where no day is in it. */
  readonly months: number[]
  /** Sun on the plane before reflection and shading, mean of each month [Wh/m2 day]. */
  readonly sun: number[]
}

/**
 * Energy of one panel at its maximum power point, hour by hour. Losses outside the panel (wiring, controller, dirt) are the caller's.
 *
 * @param sun    hours of 12 mean days, of a year, or of any days
 * @param mount  plane and losses at the panel
 * @param power  of the panel, see `powerTable` and `linearPowerTable`
 * @returns      hours, and means by month
 * @source sky: Perez et al. (1990); face: Martin & Ruiz (2001, 2005); cell temperature: Ross (1981); power: De Soto et al. (2006)
 */
export function panelEnergy(sun: SunHours, mount: Mount, power: PowerTable): Energy {
  const lit = lighting(sun, mount)
  const light = { arriving: 0, entering: 0, cell: 0 }
  const hours = new Float64Array(sun.global.length)
  const months = new Array<number>(12).fill(0)
  const onPlane = new Array<number>(12).fill(0)
  const counted = new Array<number>(12).fill(0)

  sun.days.forEach(({ month }, d) => {
    counted[month]!++
    for (let at = 24 * d; at < 24 * d + 24; at++) {
      if (sun.global[at] === 0) continue
      lit(at, light)
      hours[at] = powerAt(power, light.entering, light.cell)
      months[month]! += hours[at]!
      onPlane[month]! += light.arriving
    }
  })
  const mean = (total: number, month: number) => (counted[month] ? total / counted[month] : 0)
  return { hours, months: months.map(mean), sun: onPlane.map(mean) }
}

/** What a panel sees in one hour. */
export interface Light {
  /** On the plane before reflection and shading, and what gets into the cells [W/m2]. */
  arriving: number
  entering: number
  /** Temperature of the cells [°C]. */
  cell: number
}

/**
 * What a panel sees, hour by hour: writes it over a light that is handed in, as a year has many hours.
 *
 * @param sun    see `panelEnergy`
 * @param mount  see `panelEnergy`
 */
export function lighting(sun: SunHours, mount: Mount): (at: number, light: Light) => void {
  const { plane, k, albedo, ar } = mount
  const unshaded = 1 - mount.shading
  const cosTilt = Math.cos(radians(plane.tilt))
  const sinTilt = Math.sin(radians(plane.tilt))
  const east = sinTilt * Math.sin(radians(plane.azimuth))
  const north = sinTilt * Math.cos(radians(plane.azimuth))
  const through = diffuseModifiers(plane.tilt, ar)
  const skyView = (1 + cosTilt) / 2
  // `beamModifier` with its divisor worked out once, as a year has many hours
  const straightOn = Math.expm1(-1 / ar)
  return (at, light) => {
    const up = sun.up[at]!
    const diffuse = sun.diffuse[at]!
    const cosine = Math.max(0, cosTilt * up + east * sun.east[at]! + north * sun.north[at]!)
    const around = sun.aroundSun[at]!
    const direct = sun.normal[at]! * cosine + (diffuse * around * cosine) / Math.max(up, leastCosine)
    const sky = Math.max(0, diffuse * ((1 - around) * skyView + sun.horizon[at]! * sinTilt))
    const ground = sun.global[at]! * albedo * (1 - skyView)
    light.arriving = direct + sky + ground
    light.entering =
      unshaded * (direct * (Math.expm1(-cosine / ar) / straightOn) + sky * through.sky + ground * through.ground)
    light.cell = sun.air[at]! + k * unshaded * light.arriving
  }
}

/** Sum over a year of monthly means per day, in the unit of the means times days. */
export function yearTotal(months: readonly number[]): number {
  return months.reduce((sum, perDay, month) => sum + perDay * monthDays[month]!, 0)
}
