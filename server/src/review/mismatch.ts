import { heldPower, largestPower, type PanelString } from '../physics/array-curve.ts'
import { diodeAt, emptyDiode, type DiodeModel } from '../physics/diode-model.ts'
import { warmingOf, type Mount } from '../physics/energy.ts'
import type { SunHours } from '../physics/sun-hours.ts'
import { powerAt, type PowerTable } from '../physics/power-table.ts'
import type { Diode } from '../physics/single-diode.ts'
import type { Part } from '../physics/string-power.ts'
import { panelPower } from '../values/panel-power.ts'
import type { Bank } from './bank.ts'
import { halves } from './planes.ts'
import { bypassDiodesOf } from './bypass-diodes.ts'
import { clampOf, switchDrop } from './pwm.ts'
import { facingOf, lightOn, mountOf, skyOf, tableOf, type Facing } from './sun.ts'
import type { ResolvedArray, ResolvedPanels, ResolvedSystem } from './resolved.ts'
import { stringsOf } from './strings.ts'

/** What the panels of an array give wired together, over what each would give alone. */
export interface Mismatch {
  /** By month, January first [1]. */
  readonly months: readonly number[]
  /** Share of the year's energy that is lost [1]. */
  readonly loss: number
}

export type Strings = readonly (readonly ResolvedPanels[])[]

const known = new WeakMap<ResolvedArray, Mismatch | null>()

/** Of the array as it is listed; null where all panels are alike and face alike, or where a curve is not known. */
export function mismatchOf(system: ResolvedSystem, array: ResolvedArray, bank: Bank | null): Mismatch | null {
  if (!known.has(array))
    known.set(array, isAlike(array) ? null : mismatchOfStrings(system, array, stringsOf(array), bank))
  return known.get(array) ?? null
}

/** Whether panels that differ lack a curve, so that what they lose is not known. */
export const lacksCurve = (array: ResolvedArray): boolean =>
  !isAlike(array) && array.panels.some(({ panel }) => panel && !panelPower(panel.record)?.diode)

/** The hours of every fifteenth day stand for the year: clear and dull ones of all seasons. */
const everyDay = 15

/**
 * Of any wiring of the array's panels: the curves of its strings added up hour by hour, bypass diodes included.
 *
 * @returns null without a climate, or where no curve is known for a panel
 */
export function mismatchOfStrings(
  system: ResolvedSystem,
  array: ResolvedArray,
  strings: Strings,
  bank: Bank | null,
): Mismatch | null {
  const sky = skyOf(system)
  const held = clampOf(array, bank)
  const listed = seatsOf(system, strings, held)
  if (!sky || !listed) return null
  const seats = held === null ? inLowestTerms(listed) : listed
  const voltage = held === null ? null : held * Math.max(1, array.entry.wiring.in_series?.value ?? 1)
  const ofSky = worked.get(sky) ?? new Map<string, Mismatch | null>()
  worked.set(sky, ofSky)
  const key = keyOf(seats, voltage)
  const found = ofSky.has(key) ? ofSky.get(key)! : hourByHour(sky, seats, voltage)
  if (ofSky.size > 256) ofSky.clear()
  ofSky.set(key, found)
  return found
}

/** Kept from one review to the next: most of what is typed in a system leaves its wiring as it is. */
const worked = new WeakMap<SunHours, Map<string, Mismatch | null>>()

const numbers = new WeakMap<DiodeModel, number>()
let last = 0

function keyOf({ all, strings }: Seats, voltage: number | null): string {
  const seats = all.map(({ diode, mount: { plane, ...mount }, bypass, count }) => {
    const number = numbers.get(diode) ?? ++last
    numbers.set(diode, number)
    return [number, plane.tilt, plane.azimuth, ...Object.values(mount), bypass, count].join(' ')
  })
  return [voltage, ...seats, ...strings.map((string) => `${string.count} x ${[...string.seats].join(' ')}`)].join(';')
}

function hourByHour(sky: SunHours, { all, strings }: Seats, voltage: number | null): Mismatch | null {
  const lights = all.map(({ mount }) => ({ ...lightOn(sky, mount), warming: warmingOf(mount) }))
  // written over each hour, as are the strings with them
  const diodes = all.map(emptyDiode)
  const curves = strings.map((string) => curveOf(string, all, diodes))
  const together = new Array<number>(12).fill(0)
  const alone = new Array<number>(12).fill(0)
  for (let d = 7; d < sky.days.length; d += everyDay) {
    const { month } = sky.days[d]!
    for (let at = 24 * d; at < 24 * d + 24; at++) {
      if (!(sky.global[at]! > 0)) continue
      for (let s = 0; s < all.length; s++) {
        const { table, count, diode } = all[s]!
        const { arriving, entering, warming } = lights[s]!
        const cell = sky.air[at]! + warming * arriving[at]!
        alone[month]! += count * powerAt(table, entering[at]!, cell)
        diodeAt(diode, entering[at]!, cell, diodes[s])
      }
      together[month]! += voltage === null ? largestPower(curves) : heldPower(curves, voltage, switchDrop)
    }
  }
  const sum = (list: readonly number[]) => list.reduce((all, wh) => all + wh, 0)
  const whole = sum(alone)
  if (!(whole > 0)) return null
  const share = Math.min(1, sum(together) / whole)
  return { months: alone.map((wh, m) => (wh > 0 ? Math.min(1, together[m]! / wh) : share)), loss: 1 - share }
}

/** Panels of one kind on one plane. */
interface Seat {
  readonly panels: ResolvedPanels
  readonly diode: DiodeModel
  readonly table: PowerTable
  readonly mount: Mount
  readonly bypass: number
  count: number
}

/** How many panels of each seat a string has, and how many such strings there are. */
interface Seated {
  readonly seats: Map<number, number>
  count: number
}

interface Seats {
  readonly all: readonly Seat[]
  readonly strings: readonly Seated[]
}

function seatsOf(system: ResolvedSystem, strings: Strings, held: number | null): Seats | null {
  const all: Seat[] = []
  const distinct = new Map<string, Seated>()
  for (const string of strings) {
    const seats = new Map<number, number>()
    for (const [i, panels] of string.entries()) {
      const facing = facingIn(system, string, panels, i)
      const at = seatOf(system, all, panels, facing, held)
      if (at === null) return null
      all[at]!.count++
      seats.set(at, (seats.get(at) ?? 0) + 1)
    }
    const key = [...seats].sort(([a], [b]) => a - b).join(' ')
    const same = distinct.get(key)
    if (same) same.count++
    else distinct.set(key, { seats, count: 1 })
  }
  return { all, strings: [...distinct.values()] }
}

/** Strings twice as long, or twice as many of each, lose the same share. */
function inLowestTerms({ all, strings }: Seats): Seats {
  const length = strings.flatMap(({ seats }) => [...seats.values()]).reduce(commonDivisor, 0)
  const side = strings.map(({ count }) => count).reduce(commonDivisor, 0)
  return {
    all: all.map((seat) => ({ ...seat, count: seat.count / length / side })),
    strings: strings.map(({ seats, count }) => ({
      seats: new Map([...seats].map(([s, panels]) => [s, panels / length])),
      count: count / side,
    })),
  }
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b))

/** A string across a curve lies one half on each side of it. */
function facingIn(
  system: ResolvedSystem,
  string: readonly ResolvedPanels[],
  panels: ResolvedPanels,
  i: number,
): Facing {
  const facing = facingOf(panels, system)
  if (string.length < 2 || !((panels.surface?.curvature?.value ?? 0) > 0)) return facing
  return halves(facing, panels)[2 * i < string.length ? 0 : 1]
}

function seatOf(
  system: ResolvedSystem,
  all: Seat[],
  panels: ResolvedPanels,
  facing: Facing,
  held: number | null,
): number | null {
  const before = all.findIndex(
    ({ panels: other, mount: { plane } }) =>
      other.panel?.record === panels.panel?.record &&
      other.surface === panels.surface &&
      plane.tilt === facing.tilt &&
      plane.azimuth === facing.azimuth,
  )
  if (before >= 0) return before
  const mount = mountOf(system, panels, facing)
  const table = tableOf(panels, held)
  const record = panels.panel?.record
  const diode = record && panelPower(record)?.diode
  if (!mount || !table || !record || !diode) return null
  return all.push({ panels, diode, table, mount, bypass: bypassDiodesOf(record), count: 0 }) - 1
}

function curveOf({ seats, count }: Seated, all: readonly Seat[], diodes: readonly Diode[]): PanelString {
  const parts = [...seats].map(([s, length]): Part => ({ diode: diodes[s]!, count: length, bypass: all[s]!.bypass }))
  return { parts, count }
}

function isAlike({ panels, entry }: ResolvedArray): boolean {
  const [first] = panels
  const bends = (entry.wiring.in_series?.value ?? 1) > 1
  return panels.every(
    ({ panel, surface }) =>
      panel?.record === first?.panel?.record &&
      surface === first?.surface &&
      !(bends && (surface?.curvature?.value ?? 0) > 0),
  )
}
