import { panelEnergy, planeLight, warmingOf, type Energy, type Mount, type PlaneLight } from '../physics/energy.ts'
import { gridPlaces, type GridPlaces, type PowerTable } from '../physics/power-table.ts'
import { yearSunDays } from '../physics/sun-days.ts'
import { courseOf, sunOnCourse, type Course, type SunHours } from '../physics/sun-hours.ts'
import { weatherSky, type WeatherYear } from '../physics/weather-sky.ts'
import { syntheticSunDays } from '../physics/synthetic-days.ts'
import type { Climate } from '../records/records.generated.ts'
import { byMonth } from '../values/months.ts'
import { panelPower } from '../values/panel-power.ts'
import { assumed, rossOf } from '../values/mounted.ts'
import { siteAt } from './panel-at.ts'
import { clampedTable } from './pwm.ts'
import type { ResolvedPanels, ResolvedSystem } from './resolved.ts'

/** The same weather in every review, so that a figure changes only with what was typed. */
const seed = 1988

const skies = new WeakMap<Climate, Map<string, SunHours | null>>()
const measured = new WeakMap<WeatherYear, SunHours>()

/** How many years there are: one where the climate has hours of its own. */
export const yearsOf = ({ weather, years }: ResolvedSystem): number => (weather ? 1 : years)

/**
 * Hours of a year as weather makes them at the system's place, or as its own file has them; null without a climate of
 * twelve months.
 *
 * @param year  from 0
 */
export function skyOf({ climate, system, weather }: ResolvedSystem, year = 0): SunHours | null {
  if (weather) return kept(measured, weather, () => weatherSky(weather))
  const record = climate?.record
  const latitude = (system.site.latitude ?? record?.latitude)?.value
  if (!record || latitude === undefined || Math.abs(latitude) > 90) return null
  const known = kept(skies, record, () => new Map<string, SunHours | null>())
  const key = `${latitude} ${year}`
  if (!known.has(key)) known.set(key, work(record, latitude, year))
  return known.get(key) ?? null
}

function kept<K extends object, V>(map: WeakMap<K, V>, key: K, make: () => V): V {
  const known = map.get(key) ?? make()
  map.set(key, known)
  return known
}

function work(record: Climate, latitude: number, year: number): SunHours | null {
  const days = twelve(record.sun)
  if (!days || days.some((day) => day < 0)) return null
  const wh = days.map((kwh) => 1000 * kwh)
  const byLatitude = kept(courses, record, () => new Map<number, Course>())
  const course = byLatitude.get(latitude) ?? courseOf(latitude, yearSunDays(latitude, wh), airOf(record))
  byLatitude.set(latitude, course)
  return sunOnCourse(course, syntheticSunDays(latitude, wh, seed + year))
}

/** All years of a climate have it. */
const courses = new WeakMap<Climate, Map<number, Course>>()

function airOf({ air }: Climate) {
  return { high: twelve(air.mean_high) ?? mild.high, low: twelve(air.mean_low) ?? mild.low }
}

/** A number for each month, January first; null where one is missing. */
function twelve(list: Climate['sun']): number[] | null {
  const months = byMonth(list)
  const values = Array.from({ length: 12 }, (_, m) => months.get(m + 1)?.value)
  return values.includes(undefined) ? null : (values as number[])
}

/** Air where a climate gives none: its error moves the yield by a few per cent. */
const mild = { high: new Array<number>(12).fill(20), low: new Array<number>(12).fill(10) }

/** A plane that panels lie on, as the sun sees it. */
export interface Facing {
  readonly tilt: number
  readonly azimuth: number
}

export function facingOf({ surface }: ResolvedPanels, { system, climate }: ResolvedSystem): Facing {
  const latitude = (system.site.latitude ?? climate?.record.latitude)?.value ?? 45
  // turned every way through the day, a plane catches about what a level one does
  if (system.site.swings?.value) return { tilt: 0, azimuth: 180 }
  // a tilt beyond these is reported; the nearest that there is is worked with
  const tilt = Math.min(90, Math.max(0, surface?.tilt?.value ?? 0))
  return { tilt, azimuth: surface?.azimuth?.value ?? (latitude < 0 ? 0 : 180) }
}

/**
 * Energy of one panel through the first of the years where it lies, before losses outside the panel; null where its sheet says
 * too little.
 */
export function energyOf(
  system: ResolvedSystem,
  panels: ResolvedPanels,
  plane = facingOf(panels, system),
): Energy | null {
  const sky = skyOf(system)
  const table = tableOf(panels, null)
  const mount = mountOf(system, panels, plane)
  return sky && table && mount && panelEnergy(sky, mount, table, lightOn(sky, mount))
}

/** Power of one panel, at its maximum power point or held at a voltage. */
export function tableOf({ panel }: ResolvedPanels, held: number | null): PowerTable | null {
  if (!panel) return null
  return held === null ? (panelPower(panel.record)?.table ?? null) : clampedTable(panel.record, held)
}

/** How panels are mounted on a plane; null without their record. */
export function mountOf(system: ResolvedSystem, panels: ResolvedPanels, plane: Facing): Mount | null {
  const record = panels.panel?.record
  if (!record) return null
  const k = rossOf(record, siteAt(system, panels))
  const shading = Math.min(1, Math.max(0, panels.surface?.shading?.value ?? 0))
  const albedo = system.climate?.record.ground_reflection?.value ?? assumed.albedo
  return { plane, k, shading, albedo, ar: assumed.reflection }
}

const lights = new WeakMap<SunHours, Map<string, PlaneLight>>()

/** What panels on a plane see, kept for the next review: while somebody types in one file, the planes of the others stay as they are. */
export function lightOn(sky: SunHours, mount: Mount): PlaneLight {
  const ofSky = kept(lights, sky, () => new Map<string, PlaneLight>())
  const { plane, shading, albedo, ar } = mount
  const key = [plane.tilt, plane.azimuth, shading, albedo, ar].join(' ')
  const light = ofSky.get(key) ?? planeLight(sky, mount)
  if (ofSky.size > 16) ofSky.clear()
  ofSky.set(key, light)
  return light
}

/** The hours of a year in which there is sun, and the months that they lie in. */
export interface Sunny {
  readonly hours: Int32Array
  readonly months: readonly MonthRun[]
}

/** Hours of one month that follow each other: from one of the sunny hours up to another. */
export interface MonthRun {
  /** January is 0. */
  readonly month: number
  readonly from: number
  readonly to: number
}

const sunny = new WeakMap<SunHours, Sunny>()

export function sunnyHours(sky: SunHours): Sunny {
  return kept(sunny, sky, () => {
    const all = new Int32Array(sky.global.length)
    let count = 0
    for (let h = 0; h < all.length; h++) if (sky.global[h]! > 0) all[count++] = h
    const hours = all.slice(0, count)
    return { hours, months: runsOf(hours, sky) }
  })
}

function runsOf(hours: Int32Array, { days }: SunHours): readonly MonthRun[] {
  const monthOf = (n: number) => days[Math.floor(hours[n]! / 24)]!.month
  const runs: MonthRun[] = []
  for (let from = 0, to = 0; from < hours.length; from = to) {
    const month = monthOf(from)
    while (to < hours.length && monthOf(to) === month) to++
    runs.push({ month, from, to })
  }
  return runs
}

const places = new WeakMap<PlaneLight, Map<number, GridPlaces>>()

/** Where the sunny hours of a year lie on the grid of a panel's power, for all panels that are mounted alike. */
export function placesOn(sky: SunHours, mount: Mount): GridPlaces {
  const light = lightOn(sky, mount)
  const ofLight = kept(places, light, () => new Map<number, GridPlaces>())
  const warming = warmingOf(mount)
  const known = ofLight.get(warming)
  if (known) return known
  const { hours } = sunnyHours(sky)
  const entering = new Float64Array(hours.length)
  const cell = new Float64Array(hours.length)
  for (let n = 0; n < hours.length; n++) {
    const h = hours[n]!
    entering[n] = light.entering[h]!
    cell[n] = sky.air[h]! + warming * light.arriving[h]!
  }
  if (ofLight.size > 16) ofLight.clear()
  const made = gridPlaces(entering, cell)
  ofLight.set(warming, made)
  return made
}
