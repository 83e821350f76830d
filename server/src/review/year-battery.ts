import { outlineTwice, runTwice, type Store } from '../physics/battery.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import type { System } from '../records/records.generated.ts'
import type { Bank } from './bank.ts'
import { batteryTemperature, chargeInFrost, frostOf } from './frost.ts'
import { controllersOwn, demandOf, running, type Demand, type Running } from './loads.ts'
import type { ResolvedSystem } from './resolved.ts'

/** A year hour by hour [Wh], and the state of charge. */
export interface Hours {
  readonly produced: Float64Array
  readonly load: Float64Array
  readonly soc: Float64Array
  readonly unserved: Float64Array
  readonly curtailed: Float64Array
  readonly stored: Float64Array
  readonly drawn: Float64Array
  /** What warms the battery, part of the load. */
  readonly heat: Float64Array
}

/** The last that was asked for, of a system as it was typed, and what else it depends on. */
const kept = new WeakMap<System, { readonly from: readonly unknown[]; readonly around: Surroundings }>()

/** The same for all arrays that a system may have, so long as their controllers take as much for themselves. */
export function keptSurroundings(system: ResolvedSystem, bank: Bank, sky: SunHours): Surroundings {
  const from = [system.battery, sky, controllersOwn(system)]
  const known = kept.get(system.system)
  if (known && from.every((one, i) => one === known.from[i])) return known.around
  const around = surroundings(system, bank, sky, demandOf(system))
  kept.set(system.system, { from, around })
  return around
}

/** All that the battery meets beside the sun: the same in every year. */
export interface Surroundings {
  readonly store: Store
  readonly load: Float64Array
  /** What other sources give; null for nothing. */
  readonly other: Float64Array | null
  readonly frost: ReturnType<typeof frostOf>
  readonly bank: Bank
  readonly temperature: Float64Array
  /** Written over by each year: what comes in, what of it may be offered, what warms the battery, what all take. */
  readonly fields: Record<'produced' | 'offered' | 'heat' | 'taken' | 'soc' | 'unserved', Float64Array>
}

export function surroundings(system: ResolvedSystem, bank: Bank, sky: SunHours, demand: Demand): Surroundings {
  const field = () => new Float64Array(sky.global.length)
  const load = field()
  const other = system.system.other_sources.length > 0 ? field() : null
  sky.days.forEach(({ month }, d) => {
    load.set(demand(month + 1, d % 7).hours, 24 * d)
    if (other) for (const source of running(system, month + 1, d % 7)) addRunning(other, 24 * d, source)
  })
  const oneWay = Math.sqrt(bank.roundTrip)
  const store: Store = {
    capacity: bank.energy,
    floor: 1 - bank.depth,
    chargeEfficiency: oneWay,
    dischargeEfficiency: oneWay,
    mostIn: bank.mostIn * bank.charging,
    mostOut: bank.mostOut * bank.voltage,
    acceptance: bank.acceptance,
  }
  const temperature = batteryTemperature(system, sky)
  const frost = frostOf(system)
  const meetsFrost = frost !== null && temperature.some((t) => t < frost.limit)
  const [produced, heat] = [field(), field()]
  const [offered, taken] = meetsFrost ? [field(), field()] : [produced, load]
  const fields = { produced, offered, heat, taken, soc: field(), unserved: field() }
  return { store, load, other, frost: meetsFrost ? frost : null, bank, temperature, fields }
}

/** What comes in, what of it the battery is offered, and what is taken: written into the fields. */
function meet({ load, other, frost, bank, temperature, fields }: Surroundings, solar: Float64Array): void {
  const { produced, offered, heat, taken } = fields
  produced.set(solar)
  if (other) for (let h = 0; h < produced.length; h++) produced[h]! += other[h]!
  if (!frost) return
  chargeInFrost(frost, bank, temperature, produced, load, { offered, heat })
  for (let h = 0; h < load.length; h++) taken[h] = load[h]! + heat[h]!
}

/** What is unserved in a year [Wh], and the lowest state of charge. */
export function outcome(
  around: Surroundings,
  solar: Float64Array,
): { readonly unserved: number; readonly least: number } {
  const { store, fields } = around
  meet(around, solar)
  return outlineTwice(store, 1, fields.offered, fields.taken, fields)
}

export function inFull(around: Surroundings, solar: Float64Array): Hours {
  const { store, fields } = around
  meet(around, solar)
  const { produced, offered, heat, taken: load } = fields
  const hours = { ...runTwice(store, 1, offered, load), produced, load, heat }
  for (let h = 0; h < load.length; h++) hours.curtailed[h]! += produced[h]! - offered[h]!
  return hours
}

/** From the morning on, or as much earlier as the day is too short; wind and water evenly over day and night. */
function addRunning(produced: Float64Array, midnight: number, { power, hours, anyTime }: Running): void {
  if (anyTime) {
    for (let h = 0; h < 24; h++) produced[midnight + h]! += (power * hours) / 24
    return
  }
  const start = Math.min(morning, Math.floor(24 - hours))
  for (let h = start; h < start + hours; h++) produced[midnight + h]! += power * Math.min(1, start + hours - h)
}

const morning = 8
