import { bankOf, inverterEfficiency } from './bank.ts'
import { sharesOf, windowOf } from './hours-of-day.ts'
import type { ResolvedSystem } from './resolved.ts'

/** Energy through the battery's terminals on a day of the year [Wh]. */
export interface DayEnergy {
  readonly load: number
  readonly other: number
  /** The load of each of the 24 hours. */
  readonly hours: readonly number[]
}

/** A source while it runs, and how long on that day. */
export interface Running {
  /** [W] */
  readonly power: number
  readonly hours: number
  /** Whether it runs when it will, by day and night. */
  readonly anyTime: boolean
}

/** What a day takes and what other sources give, by month (1 to 12) and day of the week (0 to 6). */
export type Demand = (month: number, weekday: number) => DayEnergy

interface Use {
  readonly months: readonly { readonly value: number }[]
  readonly days_a_week?: { readonly value: number }
  readonly power?: { readonly value: number }
  readonly hours?: { readonly value: number }
  readonly at?: { readonly value: string }
}

const second = 1 / 3600

/** Loads of which nothing says when on the day they run, as they are spread over all of it. */
export const loadsAtAnyTime = ({ system }: ResolvedSystem): readonly Load[] =>
  system.loads.filter(({ at, hours }) => !at && (hours?.value ?? 0) * second < 24)

/** What the controllers take for themselves [A]. */
export const controllersOwn = ({ arrays }: ResolvedSystem): number =>
  arrays.reduce((sum, { controller }) => sum + (controller?.record.self_consumption?.value ?? 0), 0)

/**
 * Loads and other sources, day by day. Days of use follow each other from the start of the week, as a weekend does; a part
 * of a day takes its share. Inverter losses, its standby and the controllers' own consumption are loads too.
 */
export function demandOf(resolved: ResolvedSystem): Demand {
  const { system } = resolved
  const voltage = bankOf(resolved)?.voltage ?? 12
  const own = controllersOwn(resolved)
  const efficiency = inverterEfficiency(system.inverter.efficiency?.value)
  const ac = system.loads.filter(({ supply }) => supply?.value === 'ac')
  const { standby, hours } = system.inverter
  const standbyDay = (standby?.value ?? 0) * (hours ? hours.value * second : 24)
  const shares = new Map(system.loads.map((use) => [use, spread(use)]))
  const days = (month: number, weekday: number): DayEnergy => {
    const on = ac.length === 0 || ac.some((use) => share(use, month, weekday) > 0)
    const hours = new Array<number>(24).fill(own * voltage + (on ? standbyDay / 24 : 0))
    for (const use of system.loads) {
      const wh = energy(use, month, weekday) / (use.supply?.value === 'ac' ? efficiency : 1)
      if (wh !== 0) shares.get(use)!.forEach((share, hour) => (hours[hour]! += share * wh))
    }
    const other = system.other_sources.reduce((sum, use) => sum + energy(use, month, weekday), 0)
    return { load: hours.reduce((sum, wh) => sum + wh, 0), other, hours }
  }
  const known = Array.from({ length: 12 }, (_, m) => Array.from({ length: 7 }, (_, day) => days(m + 1, day)))
  return (month, weekday) => known[month - 1]![weekday]!
}

/** The other sources of a day, one by one: what a generator gives in two hours a battery may not take. */
export function running({ system }: ResolvedSystem, month: number, weekday: number): readonly Running[] {
  return system.other_sources.map((use) => ({
    power: Math.max(0, use.power?.value ?? 0),
    hours: Math.min(24, Math.max(0, (use.hours?.value ?? 0) * second * share(use, month, weekday))),
    anyTime: use.kind?.value === 'wind' || use.kind?.value === 'hydro',
  }))
}

/** Mean over the week of a month [Wh/day]. */
export function meanDemand(demand: Demand, month: number): Pick<DayEnergy, 'load' | 'other'> {
  let load = 0
  let other = 0
  for (let day = 0; day < 7; day++) {
    load += demand(month, day).load / 7
    other += demand(month, day).other / 7
  }
  return { load, other }
}

/** The load that takes most on a mean day of a month. */
export function largestLoad({ system }: ResolvedSystem, month: number): Load | undefined {
  const week = (use: Load) => [0, 1, 2, 3, 4, 5, 6].reduce((sum, day) => sum + energy(use, month, day), 0)
  return system.loads.reduce<Load | undefined>((most, use) => (!most || week(most) < week(use) ? use : most), undefined)
}

type Load = ResolvedSystem['system']['loads'][number]

const energy = (use: Use, month: number, weekday: number): number =>
  (use.power?.value ?? 0) * (use.hours?.value ?? 0) * second * share(use, month, weekday)

/** Over the hours of the day, see `sharesOf`. */
function spread({ at, hours }: Use): readonly number[] {
  return sharesOf(at ? windowOf(at.value) : null, Math.max(1 / 60, (hours?.value ?? 0) * second))
}

function share({ months, days_a_week: days }: Use, month: number, weekday: number): number {
  if (months.length > 0 && !months.some(({ value }) => value === month)) return 0
  return Math.min(1, Math.max(0, (days?.value ?? 7) - weekday))
}
