import { drawable, emptier, fuller, leftIn, storable, type Store } from './battery.ts'

/** What drains a battery through a year, and when nothing comes in. */
export interface Drain {
  /** [Wh] by hour. */
  readonly load: Float64Array
  /** Of all hours before each, one more than there are hours [Wh]. */
  readonly before: Float64Array
  readonly largest: number
}

export function drainOf(load: Float64Array): Drain {
  const before = new Float64Array(load.length + 1)
  let largest = 0
  for (let h = 0; h < load.length; h++) {
    before[h + 1] = before[h]! + load[h]!
    if (load[h]! > largest) largest = load[h]!
  }
  return { load, before, largest }
}

/** Written over: state of charge [1] and what is unserved [Wh], for each hour of sun with the night before it, and after the last. */
export interface Outline {
  readonly soc: Float64Array
  readonly unserved: Float64Array
}

/**
 * What `runTwice` comes to, for many years of which one is looked at in full: hours without sun are taken together. It starts
 * full, so that nothing in the first time is lower than the same hour of the second.
 *
 * @param hours     those in which something may come in, in order
 * @param produced  what comes in [Wh], one for each of them
 * @param into      written over, one longer
 * @returns         what is unserved in all [Wh], and the lowest state of charge
 */
export function outlineTwice(
  store: Store,
  hours: Int32Array,
  produced: Float64Array,
  drain: Drain,
  into: Outline,
): { readonly unserved: number; readonly least: number } {
  const { load } = drain
  let [soc, all, least] = [1, 0, 1]
  for (let pass = 0; pass < 2; pass++) {
    let next = 0
    for (let n = 0; n <= hours.length; n++) {
      const h = n < hours.length ? hours[n]! : load.length
      let lacking = 0
      if (next < h) {
        const night = through(store, soc, drain, next, h)
        if (night < 0) {
          for (; next < h; next++) {
            const drawn = drawable(store, soc, load[next]!)
            soc = emptier(store, soc, drawn)
            lacking += load[next]! - drawn
          }
        } else soc = night
        if (soc < least) least = soc
      }
      if (n < hours.length) {
        const surplus = produced[n]! - load[h]!
        if (surplus >= 0) soc = fuller(store, soc, storable(store, soc, surplus))
        else {
          const drawn = drawable(store, soc, -surplus)
          soc = emptier(store, soc, drawn)
          lacking -= surplus + drawn
        }
        if (soc < least) least = soc
      }
      if (pass === 0) all += lacking
      else {
        all += lacking - into.unserved[n]!
        if (soc === into.soc[n]) return { unserved: all, least }
      }
      into.soc[n] = soc
      into.unserved[n] = lacking
      next = h + 1
    }
  }
  return { unserved: all, least }
}

/** State of charge after hours in which nothing comes in; below 0 where they have to be gone through one by one. */
function through(store: Store, soc: number, { before, largest }: Drain, from: number, to: number): number {
  const wanted = before[to]! - before[from]!
  return largest <= store.mostOut && wanted < leftIn(store, soc)
    ? soc - wanted / (store.dischargeEfficiency * store.capacity)
    : -1
}
