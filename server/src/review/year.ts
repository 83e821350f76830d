import { runTwice, type Store } from '../physics/battery.ts'
import { monthDays } from '../physics/sun.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import { byMonth } from '../values/months.ts'
import { bankOf, controllerEfficiency, type Bank } from './bank.ts'
import type { MonthFigures } from './figures.ts'
import { demandOf, meanDemand, running, type Demand, type Running } from './loads.ts'
import { arrayCable } from './array-figures.ts'
import { batteryTemperature, chargingInFrost, frostOf } from './frost.ts'
import { mismatchOf } from './mismatch.ts'
import { clampOf } from './pwm.ts'
import { energyOf, facingOf, skyOf, yearsOf } from './sun.ts'
import { arrayPmax, countOf } from './strings.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'

/** Dirt 3 %, connections and unlike panels 2 % (common practice, no source). */
export const usualLosses = 0.95

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
  const years: One[] = []
  for (let year = 0; year < yearsOf(system); year++) {
    const sky = skyOf(system, year)
    const solar = sky && produced(system, bank, year)
    if (!sky || !solar) return null
    const hours = bank && run(system, bank, sky, solar, demand)
    years.push({ sky, solar, hours, unserved: hours && sum(hours.unserved), given: sum(solar) })
    if (year + 1 === few && bank && years.every((one) => isAtEase(one, bank))) break
  }
  const worse = (a: One, b: One) => (a.unserved ?? 0) - (b.unserved ?? 0) || b.given - a.given
  const inOrder = years.sort(worse)
  const usual = inOrder[Math.floor(years.length / 2)]!
  const { unserved } = usual
  const unservedP90 = inOrder[Math.ceil(0.9 * years.length) - 1]!.unserved
  return { months: monthsOf(system, usual, demand), hours: usual.hours, unserved, unservedP90 }
}

/** Where so many years never come near the floor, the others are not worked out: nothing goes unmet in them either. */
const few = 3

/** At least a third of what may be used stays in the battery. */
const isAtEase = ({ hours }: One, { depth }: Bank): boolean =>
  !!hours && hours.soc.every((soc) => 1 - (2 / 3) * depth < soc)

interface One {
  readonly sky: SunHours
  readonly solar: Float64Array
  readonly hours: Hours | null
  readonly unserved: number | null
  readonly given: number
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
      lowest_soc: hours && lowest(hours.soc, at),
      unserved_wh_day: hours && mean(hours.unserved),
    }
  })
}

/** What the arrays bring to the battery [Wh] hour by hour, after cable, controller and the usual losses; null where a panel says too little. */
function produced(system: ResolvedSystem, bank: Bank | null, year: number): Float64Array | null {
  let sum: Float64Array | null = null
  for (const array of system.arrays) {
    const own = arrayHours(system, array, bank, year)
    if (!own) return null
    if (sum) for (let h = 0; h < own.length; h++) sum[h]! += own[h]!
    else sum = own
  }
  return sum
}

function arrayHours(
  system: ResolvedSystem,
  array: ResolvedArray,
  bank: Bank | null,
  year: number,
): Float64Array | null {
  let sum: Float64Array | null = null
  for (const panels of array.panels) {
    const one = energyOf(system, panels, clampOf(array, bank), facingOf(panels, system), year)
    if (!one) return null
    const count = countOf(panels)
    sum ??= new Float64Array(one.hours.length)
    for (let h = 0; h < sum.length; h++) if (one.hours[h]! > 0) sum[h]! += count * one.hours[h]!
  }
  if (!sum) return null
  // of full power so much is lost in the cable; of less, less in proportion, as the loss goes with the square of the current
  const drop = (arrayCable(system, array)?.drop_pct ?? 0) / 100 / (arrayPmax(array) || Infinity)
  const months = mismatchOf(system, array, bank)?.months
  const factor = usualLosses * controllerEfficiency(array)
  const most = (array.controller?.record.output.max_current?.value ?? Infinity) * (bank?.charging ?? Infinity)
  const days = skyOf(system, year)!.days
  days.forEach(({ month }, d) => {
    const together = months?.[month] ?? 1
    for (let h = 24 * d; h < 24 * d + 24; h++) {
      const given = sum[h]! * together
      if (given > 0) sum[h] = Math.min(most, given * (1 - Math.min(0.5, drop * given)) * factor)
    }
  })
  return sum
}

function run(system: ResolvedSystem, bank: Bank, sky: SunHours, solar: Float64Array, demand: Demand): Hours {
  const produced = solar.slice()
  const load = new Float64Array(solar.length)
  sky.days.forEach(({ month }, d) => {
    load.set(demand(month + 1, d % 7).hours, 24 * d)
    for (const source of running(system, month + 1, d % 7)) addRunning(produced, 24 * d, source)
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
  const { offered, heat } = chargingInFrost(frostOf(system)!, bank, batteryTemperature(system, sky), produced, load)
  for (let h = 0; h < load.length; h++) load[h]! += heat[h]!
  const stored = runTwice(store, 1, offered, load)
  for (let h = 0; h < load.length; h++) stored.curtailed[h]! += produced[h]! - offered[h]!
  return { ...stored, produced, load, heat }
}

/** From the morning on, or as much earlier as the day is too short. */
function addRunning(produced: Float64Array, midnight: number, { power, hours }: Running): void {
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

function lowest(soc: Float64Array, days: readonly number[]): number {
  let least = 1
  for (const d of days) for (let h = 24 * d; h < 24 * d + 24; h++) least = Math.min(least, soc[h]!)
  return least
}
