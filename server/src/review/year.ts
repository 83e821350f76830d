import { outlineTwice, runTwice, type Store } from '../physics/battery.ts'
import { monthDays } from '../physics/sun.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import { byMonth } from '../values/months.ts'
import { bankOf, type Bank } from './bank.ts'
import type { MonthFigures } from './figures.ts'
import { demandOf, meanDemand, running, type Demand, type Running } from './loads.ts'
import { batteryTemperature, chargeInFrost, frostOf } from './frost.ts'
import { skyOf, yearsOf } from './sun.ts'
import { plantOf, produce } from './year-yield.ts'
import type { ResolvedSystem } from './resolved.ts'

export interface Year {
  readonly months: readonly MonthFigures[]
  /** Energy of the year through the battery's terminals [Wh]: in balance, see `storeHour`. */
  readonly hours: Hours | null
  /** What the loads do not get in this year and in one of which nine in ten are no worse [Wh]; null without a battery. */
  readonly unserved: number | null
  readonly unservedP90: number | null
}

/** Of a whole year: what the loads take and what they do not get. */
export interface Shortfall {
  /** [Wh] */
  readonly load: number
  readonly unserved: number
  /** How many hours have an unmet load, of how many. */
  readonly shortHours: number
  readonly hours: number
}

export function shortfallOf({ hours }: Year): Shortfall | null {
  if (!hours) return null
  const { load, unserved } = hours
  const shortHours = unserved.reduce((count, wh) => count + (wh > tiny ? 1 : 0), 0)
  return { load: sum(load), unserved: sum(unserved), shortHours, hours: load.length }
}

/** Less than a millionth of a watt-hour is rounding. */
const tiny = 1e-6

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

const known = new WeakMap<ResolvedSystem, Year | null>()

/**
 * A usual year hour by hour: of several years, the one with the median of what is not met. Sun in runs of good and bad days
 * around the given monthly means, or as a file of hours has it; each load at its time of day; other sources at full power from
 * the morning on; the battery between its floor and full, and not charged below its lowest temperature. Each year starts full
 * and runs twice; the second time counts.
 *
 * @returns null without a climate of twelve months, or where an array's panels say too little
 */
export function yearOf(system: ResolvedSystem): Year | null {
  if (!known.has(system)) known.set(system, work(system))
  return known.get(system) ?? null
}

function work(system: ResolvedSystem): Year | null {
  const bank = bankOf(system)
  const demand = demandOf(system)
  const plant = plantOf(system, bank)
  const first = skyOf(system)
  if (!plant || !first) return null
  const around = bank && surroundings(system, bank, first, demand)
  const solar = new Float64Array(first.global.length)
  const years: Outcome[] = []
  for (let year = 0; year < yearsOf(system); year++) {
    produce(plant, skyOf(system, year)!, solar)
    years.push({ year, given: sum(solar), ...(around ? outcome(around, solar) : withoutBattery) })
    if (year + 1 === few && bank && years.every(({ least }) => 1 - (2 / 3) * bank.depth < least)) break
  }
  const worse = (a: Outcome, b: Outcome) => (a.unserved ?? 0) - (b.unserved ?? 0) || b.given - a.given
  const inOrder = years.sort(worse)
  const { year, unserved } = inOrder[Math.floor(years.length / 2)]!
  const sky = skyOf(system, year)!
  produce(plant, sky, solar)
  const hours = around && inFull(around, solar)
  const unservedP90 = inOrder[Math.ceil(0.9 * years.length) - 1]!.unserved
  return { months: monthsOf(system, { sky, solar, hours }, demand), hours, unserved, unservedP90 }
}

/** Where so many years keep at least a third of what may be used in the battery, the others are not worked out: nothing goes unmet in them either. */
const few = 3

/** What is kept of a year to choose among them. */
interface Outcome {
  readonly year: number
  readonly unserved: number | null
  /** By the panels [Wh]. */
  readonly given: number
  /** Lowest state of charge [1]. */
  readonly least: number
}

const withoutBattery = { unserved: null, least: 1 }

interface One {
  readonly sky: SunHours
  readonly solar: Float64Array
  readonly hours: Hours | null
}

function monthsOf(system: ResolvedSystem, { sky, solar, hours }: One, demand: Demand): MonthFigures[] {
  const sun = byMonth(system.climate?.record.sun ?? [])
  const days = monthDays.map((): number[] => [])
  sky.days.forEach(({ month }, d) => days[month]!.push(d))
  return days.map((at, m): MonthFigures => {
    const mean = (list: Float64Array) => total(list, at) / Math.max(1, at.length)
    return {
      month: m + 1,
      sun_kwh_m2_day: system.weather ? mean(sky.global) / 1000 : (sun.get(m + 1)?.value ?? 0),
      yield_wh_day: mean(solar),
      load_wh_day: meanDemand(demand, m + 1).load + (hours ? mean(hours.heat) : 0),
      lowest_soc: hours && Math.min(...at.map((d) => lowest(hours.soc, 24 * d, 24 * d + 24))),
      unserved_wh_day: hours && mean(hours.unserved),
    }
  })
}

/** All that the battery meets beside the sun: the same in every year. */
interface Surroundings {
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

function surroundings(system: ResolvedSystem, bank: Bank, sky: SunHours, demand: Demand): Surroundings {
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

function outcome(around: Surroundings, solar: Float64Array): Pick<Outcome, 'unserved' | 'least'> {
  const { store, fields } = around
  meet(around, solar)
  outlineTwice(store, 1, fields.offered, fields.taken, fields)
  return { unserved: sum(fields.unserved), least: lowest(fields.soc) }
}

function inFull(around: Surroundings, solar: Float64Array): Hours {
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

function sum(list: Float64Array): number {
  let all = 0
  for (let h = 0; h < list.length; h++) all += list[h]!
  return all
}

function total(list: Float64Array, days: readonly number[]): number {
  let sum = 0
  for (const d of days) for (let h = 24 * d; h < 24 * d + 24; h++) sum += list[h]!
  return sum
}

function lowest(soc: Float64Array, from = 0, to = soc.length): number {
  let least = 1
  for (let h = from; h < to; h++) if (soc[h]! < least) least = soc[h]!
  return least
}
