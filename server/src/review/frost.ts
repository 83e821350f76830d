import { chemistries } from '../values/chemistry.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import type { Bank } from './bank.ts'
import type { ResolvedSystem } from './resolved.ts'

/** How a battery meets the cold. */
export interface Frost {
  /** Below it the battery is not charged [°C]. */
  readonly limit: number
  readonly heated: boolean
}

/** What the maker permits, or what is usual for the chemistry; null without a battery. */
export function frostOf({ battery, system }: ResolvedSystem): Frost | null {
  const { chemistry, charge } = battery?.record ?? {}
  if (!chemistry) return null
  const limit = charge?.lowest_temperature?.value ?? chemistries[chemistry.value].coldest
  return { limit, heated: system.battery.charge_protection?.value === 'heated' }
}

/** Whether something keeps the battery from being charged too cold: said by the system, else by the older flag of system or record. */
export function isProtected({ battery, system }: ResolvedSystem): boolean {
  const { charge_protection: protection, low_temperature_cutoff: cutoff } = system.battery
  return !!(protection ?? (cutoff?.value || battery?.record.charge.low_temperature_cutoff?.value))
}

/** Whether the battery is kept behind walls: what is kept above a temperature is, unless the system says otherwise. */
export function isInside({ system }: ResolvedSystem): boolean {
  const { place, kept_above: kept } = system.battery
  return place ? place.value === 'inside' : kept !== undefined
}

/** As cold as the battery gets where it is kept [°C]; `air` is that of the coldest morning. */
export function coldestBattery(resolved: ResolvedSystem): number {
  const { coldest, system } = resolved
  const { kept_above: kept } = system.battery
  return isInside(resolved) && kept ? Math.max(coldest.value, kept.value) : coldest.value
}

/**
 * Temperature of the battery hour by hour [°C]: that of the air outside; inside walls even out day and night, and it is as
 * warm as the place is kept.
 */
export function batteryTemperature(resolved: ResolvedSystem, { air }: SunHours): Float64Array {
  if (!isInside(resolved)) return air
  const { kept_above: kept } = resolved.system.battery
  const inside = new Float64Array(air.length)
  for (let start = 0; start < air.length; start += 24) {
    const mean = air.subarray(start, start + 24).reduce((sum, t) => sum + t, 0) / 24
    inside.fill(Math.max(mean, kept?.value ?? -Infinity), start, start + 24)
  }
  return inside
}

/** Heat that a battery takes [Wh/K for each kWh]: 8.6 kg a kWh at 1 kJ/(kg K), trade values from memory. */
const capacity = 2.4
/** What one of 1.28 kWh loses to the cold [W/K], half insulated; larger ones by their surface. Common practice, no source. */
const losing = 1

/** What comes in while it is too cold. */
export interface Charging {
  /** What may be offered to the battery and the loads [Wh], the rest is refused; as `produced` where nothing stops it. */
  readonly offered: Float64Array
  /** What warms the battery [Wh]. */
  readonly heat: Float64Array
}

/**
 * What a battery that is too cold to be charged leaves of each hour: the loads are met from what comes in, the rest is refused,
 * or warms the battery first.
 *
 * @param charging  written over
 */
export function chargeInFrost(
  { limit, heated }: Frost,
  { energy }: Bank,
  temperature: Float64Array,
  produced: Float64Array,
  load: Float64Array,
  { offered, heat }: Charging,
): void {
  const stores = (capacity * energy) / 1000
  const loses = losing * (energy / 1280) ** (2 / 3)
  const kept = Math.exp(-loses / stores)
  let warmth = 0
  offered.set(produced)
  heat.fill(0)
  for (let h = 0; h < produced.length; h++) {
    const lacking = limit - temperature[h]!
    warmth *= kept
    if (lacking <= 0) continue
    const surplus = produced[h]! - load[h]!
    if (surplus <= 0) continue
    if (heated) {
      const wanted = Math.max(0, stores * lacking - warmth) + loses * lacking
      heat[h] = Math.min(surplus, wanted)
      warmth += heat[h]!
      if (wanted <= surplus) continue
    }
    offered[h] = load[h]! + heat[h]!
  }
}
