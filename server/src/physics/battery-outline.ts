import { emptier, fuller, leftIn, storable, type Store } from './battery.ts'

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

/** Written over, for each span of hours that drain and of hours that charge after it: state of charge at its end [1] and what is unserved in it [Wh]. */
export interface Outline {
  readonly soc: Float64Array
  readonly unserved: Float64Array
}

/**
 * What `runTwice` comes to, for many years of which one is looked at in full: hours that drain the battery are taken together,
 * and so are those that charge it, unless it takes the less the fuller it is. It starts full, so that nothing in the first time
 * is lower than the same hour of the second.
 *
 * @param hours     those in which something may come in, in order
 * @param produced  what comes in [Wh], one for each of them
 * @param into      written over, one longer than `hours`
 * @returns         what is unserved in all [Wh], and the lowest state of charge
 */
export function outlineTwice(
  store: Store,
  hours: Int32Array,
  produced: Float64Array,
  drain: Drain,
  into: Outline,
): { readonly unserved: number; readonly least: number } {
  const { load, before, largest } = drain
  const isSteady = store.acceptance === Infinity
  let [soc, all, least] = [1, 0, 1]
  for (let pass = 0; pass < 2; pass++) {
    for (let h = 0, n = 0, span = 0; h < load.length; span++) {
      let [wanted, tooMuch] = [0, 0]
      for (;;) {
        const night = h
        h = n < hours.length ? hours[n]! : load.length
        if (night < h) {
          wanted += before[h]! - before[night]!
          if (store.mostOut < largest) tooMuch += above(store.mostOut, load, night, h)
        }
        if (h === load.length) break
        const lacking = load[h]! - produced[n]!
        if (lacking <= 0) break
        wanted += lacking
        if (store.mostOut < lacking) tooMuch += lacking - store.mostOut
        h++
        n++
      }
      const drawn = Math.min(wanted - tooMuch, leftIn(store, soc))
      soc = emptier(store, soc, drawn)
      if (soc < least) least = soc

      let offered = 0
      for (; n < hours.length && hours[n] === h; n++, h++) {
        const surplus = produced[n]! - load[h]!
        if (surplus < 0) break
        if (isSteady) offered += Math.min(surplus, store.mostIn)
        else soc = fuller(store, soc, storable(store, soc, surplus))
      }
      if (isSteady) soc = fuller(store, soc, offered)

      const unserved = wanted - drawn
      if (pass === 0) all += unserved
      else {
        all += unserved - into.unserved[span]!
        if (soc === into.soc[span]) return { unserved: all, least }
      }
      into.soc[span] = soc
      into.unserved[span] = unserved
    }
  }
  return { unserved: all, least }
}

/** What is wanted beyond the most that may go out in an hour [Wh]. */
function above(mostOut: number, load: Float64Array, from: number, to: number): number {
  let all = 0
  for (let h = from; h < to; h++) all += Math.max(0, load[h]! - mostOut)
  return all
}
