import { powerAt, type PowerTable } from '../physics/power-table.ts'
import { warmingOf, type Mount } from '../physics/energy.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import { arrayCable } from './array-figures.ts'
import { controllerEfficiency, type Bank } from './bank.ts'
import { controllersOf } from './controllers.ts'
import { mismatchOf } from './mismatch.ts'
import { clampOf } from './pwm.ts'
import { arrayPmax, countOf } from './strings.ts'
import { facingOf, lightOn, mountOf, tableOf } from './sun.ts'
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
 * What the arrays bring to the battery hour by hour [Wh], after cable, controller and the usual losses.
 *
 * @param into  written over
 */
export function produce(plant: Plant, sky: SunHours, into: Float64Array): void {
  into.fill(0)
  const sunny = sunnyHours(sky)
  const passed = new Float64Array(sunny.length)
  const given = new Float64Array(sunny.length)
  for (const { arrays, most } of plant) {
    passed.fill(0)
    for (const array of arrays) {
      given.fill(0)
      for (const part of array.parts) addPower(part, sky, sunny, given)
      pass(array, sky, sunny, given, passed)
    }
    for (let n = 0; n < sunny.length; n++) into[sunny[n]!]! += Math.min(most, passed[n]!)
  }
}

type Part = Wired['parts'][number]

/** Adds what the panels of a part give in each sunny hour. */
function addPower({ table, mount, count }: Part, sky: SunHours, sunny: Int32Array, given: Float64Array): void {
  const { arriving, entering } = lightOn(sky, mount)
  const { air } = sky
  const warming = warmingOf(mount)
  for (let n = 0; n < sunny.length; n++) {
    const h = sunny[n]!
    given[n]! += count * powerAt(table, entering[h]!, air[h]! + warming * arriving[h]!)
  }
}

/** Adds what comes out of cable and controller. */
function pass(
  { together, drop, efficiency }: Wired,
  { days }: SunHours,
  sunny: Int32Array,
  given: Float64Array,
  passed: Float64Array,
): void {
  for (let n = 0; n < sunny.length; n++) {
    let power = given[n]!
    if (!(power > 0)) continue
    if (together) power *= together[days[Math.floor(sunny[n]! / 24)]!.month]!
    passed[n]! += power * (1 - Math.min(0.5, drop * power)) * efficiency
  }
}

const sunnyOf = new WeakMap<SunHours, Int32Array>()

/** The hours of a year in which there is sun. */
function sunnyHours(sky: SunHours): Int32Array {
  const known = sunnyOf.get(sky) ?? Int32Array.from([...sky.global.keys()].filter((h) => sky.global[h]! > 0))
  sunnyOf.set(sky, known)
  return known
}
