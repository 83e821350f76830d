import { powersOf, type PowerTable } from '../physics/power-table.ts'
import type { Mount } from '../physics/energy.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import { arrayCable } from './array-figures.ts'
import { controllerEfficiency, type Bank } from './bank.ts'
import { controllersOf } from './controllers.ts'
import { mismatchOf } from './mismatch.ts'
import { clampOf } from './pwm.ts'
import { arrayPmax, countOf } from './strings.ts'
import { facingOf, mountOf, placesOn, sunnyHours, tableOf, type Sunny } from './sun.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'

/** Dirt 3 %, connections and unlike panels 2 % (common practice, no source). */
export const usualLosses = 0.95

/** All that brings sun to the battery, controller by controller: what does not change with the weather. */
export type Plant = readonly {
  readonly arrays: readonly Wired[]
  /** Most that the controller passes, of all its arrays together [W]. */
  readonly most: number
}[]

interface Wired {
  readonly parts: readonly { readonly table: PowerTable; readonly mount: Mount; readonly count: number }[]
  /** What the panels give together over what each would give alone, by month [1]. */
  readonly together: readonly number[] | null
  /** Share of the power that the cable loses, for each watt [1/W]. */
  readonly drop: number
  /** Of the controller, and the usual losses [1]. */
  readonly efficiency: number
}

/** Null where a panel says too little, or there is none. */
export function plantOf(system: ResolvedSystem, bank: Bank | null): Plant | null {
  const groups = controllersOf(system).map(({ controller, arrays }) => ({
    arrays: arrays.map((array) => wired(system, array, bank)),
    most: (controller?.record.output.max_current?.value ?? Infinity) * (bank?.charging ?? Infinity),
  }))
  return groups.length > 0 && groups.every(({ arrays }) => arrays.every((one) => one !== null))
    ? (groups as unknown as Plant)
    : null
}

function wired(system: ResolvedSystem, array: ResolvedArray, bank: Bank | null): Wired | null {
  const held = clampOf(array, bank)
  const parts = array.panels.map((panels) => {
    const table = tableOf(panels, held)
    const mount = mountOf(system, panels, facingOf(panels, system))
    return table && mount && { table, mount, count: countOf(panels) }
  })
  if (parts.length === 0 || parts.includes(null)) return null
  return {
    parts: parts.filter((part) => part !== null),
    together: mismatchOf(system, array, bank)?.months ?? null,
    // of full power so much is lost in the cable; of less, less in proportion, as the loss goes with the square of the current
    drop: (arrayCable(system, array)?.drop_pct ?? 0) / 100 / (arrayPmax(array) || Infinity),
    efficiency: usualLosses * controllerEfficiency(array),
  }
}

/**
 * What the arrays bring to the battery in each sunny hour [Wh], after cable, controller and the usual losses.
 *
 * @param into  written over
 */
export function produce(plant: Plant, sky: SunHours, into: Float64Array): void {
  addUp(plant, into, 1, (group, own) => bring(group, sky, own))
}

/** What a controller passes of its arrays, written over `into` [Wh]. */
function bring({ arrays, most }: Plant[number], sky: SunHours, into: Float64Array): void {
  if (arrays.length === 1) return pass(arrays[0]!, sky, most, into)
  addUp(arrays, into, 2, (array, own) => pass(array, sky, Infinity, own))
  for (let n = 0; n < into.length; n++) into[n] = Math.min(most, into[n]!)
}

/** What comes out of a cable and its controller, written over `into` [Wh]. */
function pass({ parts, together, drop, efficiency }: Wired, sky: SunHours, most: number, into: Float64Array): void {
  addUp(parts, into, 3, ({ table, mount, count }, own) => powersOf(table, placesOn(sky, mount), count, own))
  for (const { month, from, to } of sunnyHours(sky).months) {
    const share = together?.[month] ?? 1
    for (let n = from; n < to; n++) {
      const power = share * into[n]!
      // `Math.min`, as a branch here would often be mispredicted, and a library asks for millions of hours
      into[n] = Math.min(most, power * (1 - Math.min(0.5, drop * power)) * efficiency)
    }
  }
}

/**
 * What several give together, written over `into`.
 *
 * @param buffer  number of a buffer that `give` leaves alone
 * @param give    writes over what it is given
 */
function addUp<T>(
  list: readonly T[],
  into: Float64Array,
  buffer: number,
  give: (one: T, into: Float64Array) => void,
): void {
  list.forEach((one, i) => {
    if (i === 0) return give(one, into)
    const own = scratch(into.length, buffer)
    give(one, own)
    for (let n = 0; n < into.length; n++) into[n]! += own[n]!
  })
}

/** Of all hours of the year, with nothing in the dark. */
export function byHour({ hours }: Sunny, passed: Float64Array, into: Float64Array): Float64Array {
  into.fill(0)
  for (let n = 0; n < hours.length; n++) into[hours[n]!] = passed[n]!
  return into
}

const numbers = new WeakMap<PowerTable, number>()
let tables = 0

/** The same for plants that bring the same. */
export function keyOf(plant: Plant): string {
  return JSON.stringify(plant, (name, value: unknown) => {
    if (name !== 'table') return value
    const table = value as PowerTable
    if (!numbers.has(table)) numbers.set(table, ++tables)
    return numbers.get(table)
  })
}

const buffers: Float64Array[] = []

/** Room that the next year writes over: a library of panels asks for thousands of years. */
export function scratch(length: number, which = 0): Float64Array {
  if ((buffers[which]?.length ?? 0) < length) buffers[which] = new Float64Array(length)
  return buffers[which]!.subarray(0, length)
}
