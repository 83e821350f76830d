import type { Measure } from '../records/field.ts'
import type { System } from '../records/records.generated.ts'

type Load = System['loads'][number]
type Source = System['other_sources'][number]

/**
 * Loads and sources with their power and hours, whichever of amperes, ampere-hours and watt-hours were typed. A field that
 * is worked out keeps the text and the place of the typed one. What is known by the day alone runs evenly through it.
 *
 * @param nominal   of the bank [V]; null leaves amperes and ampere-hours out
 * @param charging  of the bank [V]
 */
export function inWatts(system: System, nominal: number | null, charging: number | null): System {
  return {
    ...system,
    loads: system.loads.map((load) => ({ ...load, ...powerAndHours(load, nominal) })),
    other_sources: system.other_sources.map((source) => withPower(source, charging)),
  }
}

/** Whether it is known only what a load takes in a day, so that what it draws at once is unknown. */
export const isMeanOnly = ({ power, energy, charge }: Load): boolean => {
  const day = energy ?? charge
  return power !== undefined && day !== undefined && power.pointer === day.pointer
}

const day = 86_400

function powerAndHours(load: Load, nominal: number | null): Pick<Load, 'power' | 'hours'> {
  const energy = load.energy ?? times(load.charge, nominal)
  const power = load.power ?? times(load.current, nominal)
  const { hours } = load
  if (power && hours) return { power, hours }
  if (power && energy)
    return { power, ...(power.value > 0 && { hours: as(energy, (energy.value / power.value) * 3600) }) }
  if (energy && hours && hours.value > 0) return { power: as(energy, (energy.value / hours.value) * 3600), hours }
  if (energy) return { power: as(energy, energy.value / 24), hours: as(energy, day) }
  return { ...(power && { power }), ...(hours && { hours }) }
}

function withPower(source: Source, charging: number | null): Source {
  const power = source.power ?? times(source.current, charging)
  return power ? { ...source, power } : source
}

const times = (field: Measure | undefined, by: number | null): Measure | undefined =>
  field && by !== null ? as(field, field.value * by) : undefined

const as = (field: Measure, value: number): Measure => ({ ...field, value })
