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
 * @param light  of its plane, where it is known already
 * @returns      hours, and means by month
 * @source sky: Perez et al. (1990); face: Martin & Ruiz (2001, 2005); cell temperature: Ross (1981); power: De Soto et al. (2006)
 */
export function panelEnergy(
  sun: SunHours,
  mount: Mount,
  power: PowerTable,
  light: PlaneLight = planeLight(sun, mount),
): Energy {
  const { arriving, entering } = light
  const warming = warmingOf(mount)
  const hours = new Float64Array(sun.global.length)
  const months = new Array<number>(12).fill(0)
  const onPlane = new Array<number>(12).fill(0)
  const counted = new Array<number>(12).fill(0)

  sun.days.forEach(({ month }, d) => {
    counted[month]!++
    for (let at = 24 * d; at < 24 * d + 24; at++) {
      if (sun.global[at] === 0) continue
      hours[at] = powerAt(power, entering[at]!, sun.air[at]! + warming * arriving[at]!)
      months[month]! += hours[at]!
      onPlane[month]! += arriving[at]!
    }
  })
  const mean = (total: number, month: number) => (counted[month] ? total / counted[month] : 0)
  return { hours, months: months.map(mean), sun: onPlane.map(mean) }
}

/** How much warmer than the air cells get by the sun that arrives [K m2/W]. */
export const warmingOf = ({ k, shading }: Mount): number => k * (1 - shading)

/** What a plane sees hour by hour, the same for all panels on it. */
export interface PlaneLight {
  /** On the plane before reflection and shading, and what gets into the cells [W/m2]. */
  readonly arriving: Float64Array
  readonly entering: Float64Array
}

/**
 * What a plane sees, hour by hour.
 *
 * @param sun   see `panelEnergy`
 * @param face  its plane and losses
 */
export function planeLight(sun: SunHours, { plane, shading, albedo, ar }: Omit<Mount, 'k'>): PlaneLight {
  const unshaded = 1 - shading
  const cosTilt = Math.cos(radians(plane.tilt))
  const sinTilt = Math.sin(radians(plane.tilt))
  const east = sinTilt * Math.sin(radians(plane.azimuth))
  const north = sinTilt * Math.cos(radians(plane.azimuth))
  const through = diffuseModifiers(plane.tilt, ar)
  const skyView = (1 + cosTilt) / 2
  // `beamModifier` with its divisor worked out once, as a year has many hours
  const straightOn = Math.expm1(-1 / ar)
  const arriving = new Float64Array(sun.global.length)
  const entering = new Float64Array(sun.global.length)
  for (let at = 0; at < arriving.length; at++) {
    if (sun.global[at] === 0) continue
    const up = sun.up[at]!
    const diffuse = sun.diffuse[at]!
    const cosine = Math.max(0, cosTilt * up + east * sun.east[at]! + north * sun.north[at]!)
    const around = sun.aroundSun[at]!
    const direct = sun.normal[at]! * cosine + (diffuse * around * cosine) / Math.max(up, leastCosine)
    const sky = Math.max(0, diffuse * ((1 - around) * skyView + sun.horizon[at]! * sinTilt))
    const ground = sun.global[at]! * albedo * (1 - skyView)
    arriving[at] = direct + sky + ground
    entering[at] =
      unshaded * (direct * (Math.expm1(-cosine / ar) / straightOn) + sky * through.sky + ground * through.ground)
  }
  return { arriving, entering }
}

/** Sum over a year of monthly means per day, in the unit of the means times days. */
export function yearTotal(months: readonly number[]): number {
  return months.reduce((sum, perDay, month) => sum + perDay * monthDays[month]!, 0)
}
