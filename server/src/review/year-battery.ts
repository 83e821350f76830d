import { runTwice, type Store } from '../physics/battery.ts'
import { drainOf, outlineTwice, type Drain } from '../physics/battery-outline.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import type { System } from '../records/records.generated.ts'
import type { Bank } from './bank.ts'
import { batteryTemperature, chargeInFrost, frostOf } from './frost.ts'
import { controllersOwn, demandOf, running, type Demand, type Running } from './loads.ts'
import type { ResolvedSystem } from './resolved.ts'
import type { Sunny } from './sun.ts'
import { byHour } from './year-yield.ts'

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

/** Of a system as it was typed, by what the controllers take for themselves; for as long as the rest stays. */
interface Kept {
  readonly from: readonly unknown[]
  readonly byOwn: Map<number, Surroundings>
}

const kept = new WeakMap<System, Kept>()

/** The same for all arrays that a system may have, so long as their controllers take as much for themselves. */
export function keptSurroundings(system: ResolvedSystem, bank: Bank, sky: SunHours): Surroundings {
  const from = [system.battery, sky]
  let known = kept.get(system.system)
  if (!known?.from.every((one, i) => one === from[i])) kept.set(system.system, (known = { from, byOwn: new Map() }))
  const own = controllersOwn(system)
  const around = known.byOwn.get(own) ?? surroundings(system, bank, sky, demandOf(system))
  if (known.byOwn.size > 16) known.byOwn.clear()
  known.byOwn.set(own, around)
  return around
}

/** All that the battery meets beside the sun: the same in every year. */
export interface Surroundings {
  readonly store: Store
  readonly load: Float64Array
  readonly drain: Drain
  /** What other sources give; null for nothing. */
  readonly other: Float64Array | null
  readonly frost: ReturnType<typeof frostOf>
  readonly bank: Bank
  readonly temperature: Float64Array
  /** Written over by each year: what comes in, what of it may be offered, what warms the battery, what all take. */
  readonly fields: Record<'solar' | 'produced' | 'offered' | 'heat' | 'taken' | 'soc' | 'unserved', Float64Array>
}

export function surroundings(system: ResolvedSystem, bank: Bank, sky: SunHours, demand: Demand): Surroundings {
  const field = (more = 0) => new Float64Array(sky.global.length + more)
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
  const fields = { solar: field(), produced, offered, heat, taken, soc: field(1), unserved: field(1) }
  return { store, load, drain: drainOf(load), other, frost: meetsFrost ? frost : null, bank, temperature, fields }
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

/** What is unserved in a year [Wh], and the lowest state of charge [1]. */
export interface Outcome {
  readonly unserved: number
  readonly least: number
}

/**
 * What a year comes to.
 *
 * @param passed  by the controllers, one for each sunny hour [Wh]
 */
export function outcome(around: Surroundings, sunny: Sunny, passed: Float64Array): Outcome {
  const { store, drain, other, frost, fields } = around
  if (!other && !frost) return outlineTwice(store, sunny.hours, passed, drain, fields)
  if (frost) {
    meet(around, byHour(sunny, passed, fields.solar))
    return outlineTwice(store, everyHour(fields.taken.length), fields.offered, drainOf(fields.taken), fields)
  }
  const { hours, others, sunnyAt } = withOther(sunny, other!)
  const produced = fields.produced.subarray(0, hours.length)
  produced.set(others)
  for (let n = 0; n < passed.length; n++) produced[sunnyAt[n]!]! += passed[n]!
  return outlineTwice(store, hours, produced, drain, fields)
}

/** Sunny hours and those of other sources in order, what these give in each [Wh], and where among them the sunny ones are. */
interface Giving {
  readonly hours: Int32Array
  readonly others: Float64Array
  readonly sunnyAt: Int32Array
}

const giving = new WeakMap<Float64Array, WeakMap<Sunny, Giving>>()

function withOther(sunny: Sunny, other: Float64Array): Giving {
  const bySunny = giving.get(other) ?? new WeakMap<Sunny, Giving>()
  giving.set(other, bySunny)
  const known = bySunny.get(sunny)
  if (known) return known
  const made = gathered(sunny, other)
  bySunny.set(sunny, made)
  return made
}

function gathered({ hours: sunnyHours }: Sunny, other: Float64Array): Giving {
  const hours = new Int32Array(other.length)
  const others = new Float64Array(other.length)
  const sunnyAt = new Int32Array(sunnyHours.length)
  let [count, seen] = [0, 0]
  for (let h = 0; h < other.length; h++) {
    const isSunny = sunnyHours[seen] === h
    if (isSunny) sunnyAt[seen++] = count
    if (!isSunny && other[h] === 0) continue
    hours[count] = h
    others[count++] = other[h]!
  }
  return { hours: hours.subarray(0, count), others: others.subarray(0, count), sunnyAt }
}

const everyHour = (count: number): Int32Array => Int32Array.from({ length: count }, (_, h) => h)

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
