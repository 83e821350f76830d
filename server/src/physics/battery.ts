/** What does not change while a battery works. */
export interface Store {
  /** Full [Wh]. */
  readonly capacity: number
  /** Lowest state of charge [1]; loads are cut off there. */
  readonly floor: number
  /** Share of the energy that arrives inside, and that leaves again [1]. */
  readonly chargeEfficiency: number
  readonly dischargeEfficiency: number
  /** Most that may go in or out at the terminals in an hour [Wh]; Infinity where nothing limits it. */
  readonly mostIn: number
  readonly mostOut: number
  /** How fast it takes charge, over what is missing [1/h]; Infinity where it takes all until it is full. */
  readonly acceptance: number
}

/**
 * One hour. What comes in and out balances exactly:
 *
 *     produced + unserved + drawn = load + curtailed + stored
 *
 * with `stored` put in and `drawn` taken out at the terminals, of which never both are above 0.
 */
export interface StoreHour {
  /** State of charge at the end [1]. */
  readonly soc: number
  readonly stored: number
  readonly drawn: number
  /** Load that could not be met, and production that had no place to go [Wh]. */
  readonly unserved: number
  readonly curtailed: number
}

/**
 * State of charge after an hour with so much production and load.
 *
 *     soc' = soc + chargeEfficiency stored / capacity   or   soc' = soc - drawn / (dischargeEfficiency capacity)
 *
 * The load is met from production first; the rest charges or comes from the battery, see `taken`.
 *
 * @param store     battery
 * @param soc       state of charge before [1]
 * @param produced  at the battery's terminals [Wh]
 * @param load      at the terminals [Wh]
 * @source energy balance
 */
export function storeHour(store: Store, soc: number, produced: number, load: number): StoreHour {
  const run = emptyRun(1)
  step(store, run, 0, soc, produced, load)
  return {
    soc: run.soc[0]!,
    stored: run.stored[0]!,
    drawn: run.drawn[0]!,
    unserved: run.unserved[0]!,
    curtailed: run.curtailed[0]!,
  }
}

/** `storeHour`, written into an hour of a run, as a year has many; gives the state of charge at its end. */
function step(store: Store, run: StoreRun, h: number, soc: number, produced: number, load: number): number {
  const surplus = produced - load
  const stored = surplus >= 0 ? storable(store, soc, surplus) : 0
  const drawn = surplus < 0 ? drawable(store, soc, -surplus) : 0
  const after = surplus >= 0 ? fuller(store, soc, stored) : emptier(store, soc, drawn)
  run.soc[h] = after
  run.stored[h] = stored
  run.drawn[h] = drawn
  run.unserved[h] = surplus < 0 ? -surplus - drawn : 0
  run.curtailed[h] = surplus >= 0 ? surplus - stored : 0
  return after
}

export function storable(store: Store, soc: number, surplus: number): number {
  const missing = (1 - soc) * store.capacity
  if (!(missing > 0)) return 0
  const offered = Math.min(surplus, store.mostIn)
  return Math.min(offered, taken(store.acceptance, missing, offered * store.chargeEfficiency) / store.chargeEfficiency)
}

export const fuller = (store: Store, soc: number, stored: number): number =>
  Math.min(1, soc + (stored * store.chargeEfficiency) / store.capacity)

export const drawable = (store: Store, soc: number, wanted: number): number =>
  Math.min(wanted, leftIn(store, soc), store.mostOut)

export const emptier = (store: Store, soc: number, drawn: number): number =>
  drawn === leftIn(store, soc) ? Math.min(soc, store.floor) : soc - drawn / (store.dischargeEfficiency * store.capacity)

export const leftIn = ({ floor, capacity, dischargeEfficiency }: Store, soc: number): number =>
  Math.max(0, (soc - floor) * capacity * dischargeEfficiency)

/**
 * What arrives inside in an hour of steady charging: all, until only so much is missing that the acceptance is the lower;
 * from then on what is missing dies away.
 *
 *     rate = min(offered, a m)     dm/dt = -rate
 *
 * @param acceptance  a [1/h], above 0
 * @param missing     m at the beginning [Wh]
 * @param offered     [Wh] in the hour
 * @returns           [Wh], at most what is missing or offered
 * @source solved in closed form; the current a battery takes over the charge it lacks is steady: J. A. Mas, 2nd
 *         International Electric Vehicle Symposium (1971), from memory
 */
export function taken(acceptance: number, missing: number, offered: number): number {
  const bend = offered / acceptance
  if (bend <= missing - offered) return offered
  const steady = offered > 0 ? Math.max(0, (missing - bend) / offered) : 0
  return missing - Math.min(missing, bend) * Math.exp(-acceptance * (1 - steady))
}

export interface StoreRun {
  /** State of charge at the end of each hour [1]. */
  readonly soc: Float64Array
  /** [Wh] by hour. */
  readonly unserved: Float64Array
  readonly curtailed: Float64Array
  readonly stored: Float64Array
  readonly drawn: Float64Array
}

/** Nothing yet, for so many hours. */
export function emptyRun(hours: number): StoreRun {
  const field = () => new Float64Array(hours)
  return { soc: field(), unserved: field(), curtailed: field(), stored: field(), drawn: field() }
}

/**
 * Runs a battery through a list of hours.
 *
 * @param store     battery
 * @param start     state of charge before the first hour [1]
 * @param produced  [Wh] by hour
 * @param load      [Wh] by hour, as many
 * @param run       written over, where one is at hand
 */
export function runStore(
  store: Store,
  start: number,
  produced: ArrayLike<number>,
  load: ArrayLike<number>,
  run: StoreRun = emptyRun(produced.length),
): StoreRun {
  let soc = start
  for (let h = 0; h < produced.length; h++) soc = step(store, run, h, soc, produced[h]!, load[h]!)
  return run
}

/**
 * The same hours over and over: the second time, which begins as the first has ended. Full or empty at the same hour both
 * go on alike, so that most of the second time is known already.
 *
 * @param start  state of charge before the first time [1]
 * @param run    written over, where one is at hand
 */
export function runTwice(
  store: Store,
  start: number,
  produced: ArrayLike<number>,
  load: ArrayLike<number>,
  run?: StoreRun,
): StoreRun {
  const twice = runStore(store, start, produced, load, run)
  let soc = twice.soc.at(-1) ?? start
  for (let h = 0; h < produced.length; h++) {
    const first = twice.soc[h]
    soc = step(store, twice, h, soc, produced[h]!, load[h]!)
    if (soc === first) break
  }
  return twice
}
