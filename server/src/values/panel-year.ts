import { panelEnergy, yearTotal } from '../physics/energy.ts'
import { meanSunDays } from '../physics/sun-days.ts'
import { sunHours, type SunHours } from '../physics/sun-hours.ts'
import { onceEach } from '../records/once-each.ts'
import type { Climate, Panel } from '../records/records.generated.ts'
import { assumed, rossOf } from './mounted.ts'
import { panelPower } from './panel-power.ts'
import type { Site } from './site.ts'

/** Energy of one panel lying flat, as mounted, through the mean days of a year. */
export interface PanelYear {
  /** 12 numbers, January first [Wh/day]. */
  readonly months: readonly number[]
  /** [Wh] */
  readonly total: number
  readonly model: string
}

/** What the ground reflects does not reach a panel that lies flat. */
const flat = { plane: { tilt: 0, azimuth: 180 }, shading: 0, albedo: assumed.albedo, ar: assumed.reflection }

/** Null without a climate of twelve months, or where the sheet says too little. Losses outside the panel are left out. */
export function panelYear(panel: Panel, site: Site): PanelYear | null {
  const sun = site.climate && climateHours(site.climate)
  const power = panelPower(panel)
  if (!sun || !power) return null
  const { months } = panelEnergy(sun, { ...flat, k: rossOf(panel, site) }, power.table)
  return { months, total: yearTotal(months), model: power.model }
}

/** What the sheet and the library would have to say for it. */
export const yearLacks = (panel: Panel, site: Site): readonly string[] => [
  ...(site.climate && climateHours(site.climate) ? [] : ['the climate of a place (site.climate in wattproof.yaml)']),
  ...(panelPower(panel) ? [] : [panel.temperature_coefficients.pmax ? 'Pmax' : 'Pmax coefficient']),
]

/** Hours of the mean days of each month; null where a month is missing. */
export const climateHours = onceEach(({ latitude, sun, air }: Climate): SunHours | null => {
  const whole = latitude && [sun, air.mean_high, air.mean_low].every((list) => list.length === 12)
  const [high, low] = [air.mean_high, air.mean_low].map((list) => list.map((t) => t.value))
  const days = whole
    ? meanSunDays(
        latitude.value,
        sun.map((s) => 1000 * s.value),
      )
    : []
  return whole ? sunHours(latitude.value, days, { high: high!, low: low! }) : null
})
