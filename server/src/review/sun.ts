import { panelEnergy, type Energy, type Mount } from '../physics/energy.ts'
import type { PowerTable } from '../physics/power-table.ts'
import { sunHours, type SunHours } from '../physics/sun-hours.ts'
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

function work({ sun, air }: Climate, latitude: number, year: number): SunHours | null {
  const twelve = (list: Climate['sun']) => {
    const months = byMonth(list)
    const values = Array.from({ length: 12 }, (_, m) => months.get(m + 1)?.value)
    return values.includes(undefined) ? null : (values as number[])
  }
  const [days, high, low] = [twelve(sun), twelve(air.mean_high), twelve(air.mean_low)]
  if (!days || days.some((day) => day < 0)) return null
  const wh = days.map((kwh) => 1000 * kwh)
  return sunHours(latitude, syntheticSunDays(latitude, wh, seed + year), {
    high: high ?? mild.high,
    low: low ?? mild.low,
  })
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
  return { tilt: surface?.tilt?.value ?? 0, azimuth: surface?.azimuth?.value ?? (latitude < 0 ? 0 : 180) }
}

const energies = new WeakMap<SunHours, WeakMap<PowerTable, Map<string, Energy>>>()

/**
 * Energy of one panel through the year where it lies, before losses outside the panel; null where its sheet says too little.
 *
 * @param held  voltage that the panel is held at [V]; null at its maximum power point
 * @param year  which of the years, see `skyOf`
 */
export function energyOf(
  system: ResolvedSystem,
  panels: ResolvedPanels,
  held: number | null = null,
  plane = facingOf(panels, system),
  year = 0,
): Energy | null {
  const sky = skyOf(system, year)
  const table = tableOf(panels, held)
  const mount = mountOf(system, panels, plane)
  return sky && table && mount && remembered(sky, table, mount)
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

/** While somebody types in one file, the panels of the others stay as they are. */
function remembered(sky: SunHours, table: PowerTable, mount: Mount): Energy {
  const bySky = energies.get(sky) ?? new WeakMap<PowerTable, Map<string, Energy>>()
  energies.set(sky, bySky)
  const byTable = bySky.get(table) ?? new Map<string, Energy>()
  bySky.set(table, byTable)
  const { plane, k, shading, albedo } = mount
  const key = [plane.tilt, plane.azimuth, k, shading, albedo].join(' ')
  const known = byTable.get(key) ?? panelEnergy(sky, mount, table)
  if (byTable.size > 16) byTable.clear()
  byTable.set(key, known)
  return known
}
