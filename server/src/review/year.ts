import { onceEach } from '../records/once-each.ts'
import { monthDays } from '../physics/sun.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import { byMonth } from '../values/months.ts'
import { bankOf, type Bank } from './bank.ts'
import type { MonthFigures } from './figures.ts'
import { demandOf, meanDemand, type Demand } from './loads.ts'
import { skyOf, sunnyHours, yearsOf, type Sunny } from './sun.ts'
import { inFull, keptSurroundings, surroundings, type Hours, type Surroundings } from './year-battery.ts'
import { few, isSpared, outcomeOf } from './year-enough.ts'
import { byHour, keyOf, plantOf, produce, scratch, type Plant } from './year-yield.ts'
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

/**
 * A usual year hour by hour: of several years, the one with the median of the unmet load. Sun in runs of good and bad days
 * around the given monthly means, or as a file of hours has it; each load at its time of day; other sources at full power from
 * the morning on; the battery between its floor and full, and not charged below its lowest temperature. Each year starts full
 * and runs twice; the second time counts.
 *
 * @returns null without a climate of twelve months, or where an array's panels say too little
 */
export const yearOf = onceEach(work)

function work(system: ResolvedSystem): Year | null {
  const bank = bankOf(system)
  const demand = demandOf(system)
  const plant = plantOf(system, bank)
  const first = skyOf(system)
  if (!plant || !first) return null
  const around = bank && surroundings(system, bank, first, demand)
  const { year, unserved, unservedP90 } = usualYear(system, plant, bank, around)
  const sky = skyOf(system, year)!
  const sunny = sunnyHours(sky)
  const passed = scratch(sunny.hours.length)
  produce(plant, sky, passed)
  const hours = around && inFull(around, byHour(sunny, passed, new Float64Array(sky.global.length)))
  return { months: monthsOf(system, { sky, passed, hours }, demand), hours, unserved, unservedP90 }
}

/**
 * What a review calls the yield of each month [Wh/day], without the rest of the year: for many panels on one surface.
 *
 * @returns null where `yearOf` gives null
 */
export function yieldOf(system: ResolvedSystem): readonly number[] | null {
  const bank = bankOf(system)
  const plant = plantOf(system, bank)
  const first = skyOf(system)
  if (!plant || !first) return null
  const around = bank && keptSurroundings(system, bank, first)
  const known = onceEachOf(around ?? first)
  const key = `${yearsOf(system)} ${keyOf(plant)}`
  const yields = known.get(key) ?? usualYear(system, plant, bank, around).yields
  if (known.size > 64) known.clear()
  known.set(key, yields)
  return yields
}

/** Yields by plant: panels of other sizes or prices often make the same one. */
const yieldsAround = new WeakMap<object, Map<string, readonly number[]>>()

function onceEachOf(around: object): Map<string, readonly number[]> {
  const known = yieldsAround.get(around) ?? new Map<string, readonly number[]>()
  yieldsAround.set(around, known)
  return known
}

/** Of several years the one with the median of the unmet load; where that is equal, of what the panels give. */
function usualYear(system: ResolvedSystem, plant: Plant, bank: Bank | null, around: Surroundings | null) {
  const years: YearOutcome[] = []
  for (let year = 0; year < yearsOf(system); year++) {
    const sky = skyOf(system, year)!
    const sunny = sunnyHours(sky)
    const passed = scratch(sunny.hours.length)
    produce(plant, sky, passed)
    const totals = totalsByMonth(sunny, passed)
    const given = totals.reduce((all, wh) => all + wh, 0)
    const yields = totals.map((wh, m) => wh / Math.max(1, daysByMonth(sky)[m]!.length))
    years.push({ year, yields, given, ...(around ? outcomeOf(around, year, sunny, passed) : withoutBattery) })
    // nothing goes unmet in the others either
    if (year + 1 === few && bank && years.every(({ least }) => isSpared(bank, least))) break
  }
  const inOrder = years.sort((a, b) => (a.unserved ?? 0) - (b.unserved ?? 0) || b.given - a.given)
  const usual = inOrder[Math.floor(years.length / 2)]!
  return { ...usual, unservedP90: inOrder[Math.ceil(0.9 * years.length) - 1]!.unserved }
}

/** What is kept of a year to choose among them. */
interface YearOutcome {
  readonly year: number
  readonly unserved: number | null
  /** By the panels in each month [Wh/day], and in the year [Wh]. */
  readonly yields: readonly number[]
  readonly given: number
  /** Lowest state of charge [1]. */
  readonly least: number
}

const withoutBattery = { unserved: null, least: 1 }

interface One {
  readonly sky: SunHours
  readonly passed: Float64Array
  readonly hours: Hours | null
}

function monthsOf(system: ResolvedSystem, { sky, passed, hours }: One, demand: Demand): MonthFigures[] {
  const sun = byMonth(system.climate?.record.sun ?? [])
  const yields = totalsByMonth(sunnyHours(sky), passed)
  return daysByMonth(sky).map((at, m): MonthFigures => {
    const mean = (list: Float64Array) => total(list, at) / Math.max(1, at.length)
    return {
      month: m + 1,
      sun_kwh_m2_day: system.weather ? mean(sky.global) / 1000 : (sun.get(m + 1)?.value ?? 0),
      yield_wh_day: yields[m]! / Math.max(1, at.length),
      load_wh_day: meanDemand(demand, m + 1).load + (hours ? mean(hours.heat) : 0),
      lowest_soc: hours && Math.min(...at.map((d) => lowest(hours.soc, 24 * d, 24 * d + 24))),
      unserved_wh_day: hours && mean(hours.unserved),
    }
  })
}

const byMonths = new WeakMap<SunHours, readonly (readonly number[])[]>()

/** Days of each month. */
function daysByMonth(sky: SunHours): readonly (readonly number[])[] {
  const known = byMonths.get(sky)
  if (known) return known
  const days = monthDays.map((): number[] => [])
  sky.days.forEach(({ month }, d) => days[month]!.push(d))
  byMonths.set(sky, days)
  return days
}

/** Of each month [Wh]; what is not sunny gives nothing. */
function totalsByMonth({ months }: Sunny, passed: Float64Array): number[] {
  const totals = new Array<number>(12).fill(0)
  for (const { month, from, to } of months) {
    let total = totals[month]!
    for (let n = from; n < to; n++) total += passed[n]!
    totals[month] = total
  }
  return totals
}

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

function lowest(soc: Float64Array, from: number, to: number): number {
  let least = 1
  for (let h = from; h < to; h++) if (soc[h]! < least) least = soc[h]!
  return least
}
