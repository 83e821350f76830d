import { runTwice, type Store } from '../physics/battery.ts'
import { monthDays } from '../physics/sun.ts'
import { byMonth } from '../values/months.ts'
import { bankOf, controllerEfficiency, type Bank } from './bank.ts'
import type { MonthFigures } from './figures.ts'
import { demandOf, meanDemand, running, type Demand, type Running } from './loads.ts'
import { planeLoss } from './planes.ts'
import { arrayCable } from './array-figures.ts'
import { clampOf } from './pwm.ts'
import { energyOf, skyOf } from './sun.ts'
import { countOf } from './strings.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'

/** Dirt 3 %, connections and unlike panels 2 % (common practice, no source). */
export const usualLosses = 0.95

export interface Year {
  readonly months: readonly MonthFigures[]
  /** Energy of the year through the battery's terminals [Wh]: in balance, see `storeHour`. */
  readonly hours: Hours | null
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
  const sum = (list: Float64Array) => list.reduce((all, wh) => all + wh, 0)
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
}

const known = new WeakMap<ResolvedSystem, Year | null>()

/**
 * The year hour by hour: sun in runs of good and bad days around the given monthly means, loads spread over their days, other
 * sources at full power from the morning on, the battery between its floor and full. It starts full and runs twice; the
 * second year counts.
 *
 * @returns null without a climate of twelve months, or where an array's panels say too little
 */
export function yearOf(system: ResolvedSystem): Year | null {
  if (!known.has(system)) known.set(system, work(system))
  return known.get(system) ?? null
}

function work(system: ResolvedSystem): Year | null {
  const sky = skyOf(system)
  const bank = bankOf(system)
  const solar = sky && produced(system, bank)
  if (!sky || !solar) return null
  const demand = demandOf(system)
  const sun = byMonth(system.climate?.record.sun ?? [])
  const hours = bank && run(system, bank, solar, demand, sky.days)
  const days = monthDays.map((): number[] => [])
  sky.days.forEach(({ month }, d) => days[month]!.push(d))
  const months = days.map((at, m): MonthFigures => {
    const mean = (list: Float64Array) => total(list, at) / at.length
    return {
      month: m + 1,
      sun_kwh_m2_day: sun.get(m + 1)?.value ?? 0,
      yield_wh_day: mean(solar),
      load_wh_day: meanDemand(demand, m + 1).load,
      lowest_soc: hours && lowest(hours.soc, at),
      unserved_wh_day: hours && mean(hours.unserved),
    }
  })
  return { months, hours }
}

/** What the arrays bring to the battery [Wh] hour by hour, after cable, controller and the usual losses; null where a panel says too little. */
function produced(system: ResolvedSystem, bank: Bank | null): Float64Array | null {
  let sum: Float64Array | null = null
  for (const array of system.arrays) {
    const own = arrayHours(system, array, bank)
    if (!own) return null
    if (sum) for (let h = 0; h < own.length; h++) sum[h]! += own[h]!
    else sum = own
  }
  return sum
}

function arrayHours(system: ResolvedSystem, array: ResolvedArray, bank: Bank | null): Float64Array | null {
  let sum: Float64Array | null = null
  for (const panels of array.panels) {
    const one = energyOf(system, panels, clampOf(array, bank))
    if (!one) return null
    const count = countOf(panels)
    sum ??= new Float64Array(one.hours.length)
    for (let h = 0; h < sum.length; h++) if (one.hours[h]! > 0) sum[h]! += count * one.hours[h]!
  }
  if (!sum) return null
  const drop = (arrayCable(system, array)?.drop_pct ?? 0) / 100
  const factor = usualLosses * (1 - Math.min(0.5, drop)) * (1 - planeLoss(system, array)) * controllerEfficiency(array)
  const most = (array.controller?.record.output.max_current?.value ?? Infinity) * (bank?.charging ?? Infinity)
  for (let h = 0; h < sum.length; h++) if (sum[h]! > 0) sum[h] = Math.min(most, sum[h]! * factor)
  return sum
}

function run(
  system: ResolvedSystem,
  bank: Bank,
  solar: Float64Array,
  demand: Demand,
  days: readonly { readonly month: number }[],
): Hours {
  const produced = solar.slice()
  const load = new Float64Array(solar.length)
  days.forEach(({ month }, d) => {
    load.fill(demand(month + 1, d % 7).load / 24, 24 * d, 24 * d + 24)
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
  return { ...runTwice(store, 1, produced, load), produced, load }
}

/** From the morning on, or as much earlier as the day is too short. */
function addRunning(produced: Float64Array, midnight: number, { power, hours }: Running): void {
  const start = Math.min(morning, Math.floor(24 - hours))
  for (let h = start; h < start + hours; h++) produced[midnight + h]! += power * Math.min(1, start + hours - h)
}

const morning = 8

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
