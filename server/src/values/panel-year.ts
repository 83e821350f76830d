import { panelEnergy, yearTotal } from '../physics/energy.ts'
import { assumedNoct, installedNoctRise, rossCoefficient } from '../physics/mounting.ts'
import { meanSunDays } from '../physics/sun-days.ts'
import { sunHours, type SunHours } from '../physics/sun-hours.ts'
import type { Climate, Panel } from '../records/records.generated.ts'
import { panelPower } from './panel-power.ts'
import { mountingOf, type Site } from './site.ts'

/** Energy of one panel lying flat, as mounted, through the mean days of a year. */
export interface PanelYear {
  /** 12 numbers, January first [Wh/day]. */
  readonly months: readonly number[]
  /** [Wh] */
  readonly total: number
  readonly model: string
}

/** Reflectance of the ground does not reach a panel that lies flat; glass is assumed for the face. */
const flat = { plane: { tilt: 0, azimuth: 180 }, shading: 0, albedo: 0.2, ar: 0.16 }

/** Null without a climate of twelve months, or where the sheet says too little. Losses outside the panel are left out. */
export function panelYear(panel: Panel, site: Site): PanelYear | null {
  const sun = site.climate && climateHours(site.climate)
  const power = panelPower(panel)
  if (!sun || !power) return null
  const k = rossCoefficient(panel.noct.temperature?.value ?? assumedNoct, installedNoctRise[mountingOf(panel, site)])
  const { months } = panelEnergy(sun, { ...flat, k }, power.table)
  return { months, total: yearTotal(months), model: power.model }
}

/** What the sheet and the library would have to say for it. */
export const yearLacks = (panel: Panel, site: Site): readonly string[] => [
  ...(site.climate && climateHours(site.climate) ? [] : ['the climate of a place (site.climate in wattproof.yaml)']),
  ...(panelPower(panel) ? [] : [panel.temperature_coefficients.pmax ? 'Pmax' : 'Pmax coefficient']),
]

const known = new WeakMap<Climate, SunHours | null>()

/** Hours of the mean days of each month; null where a month is missing. */
export function climateHours(climate: Climate): SunHours | null {
  const before = known.get(climate)
  if (before !== undefined) return before
  const { latitude, sun, air } = climate
  const whole = latitude && [sun, air.mean_high, air.mean_low].every((list) => list.length === 12)
  const [high, low] = [air.mean_high, air.mean_low].map((list) => list.map((t) => t.value))
  const days = whole
    ? meanSunDays(
        latitude.value,
        sun.map((s) => 1000 * s.value),
      )
    : []
  const hours = whole ? sunHours(latitude.value, days, { high: high!, low: low! }) : null
  known.set(climate, hours)
  return hours
}
