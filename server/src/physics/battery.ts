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
  const surplus = produced - load
  if (surplus >= 0) {
    const missing = Math.max(0, (1 - soc) * store.capacity)
    const offered = Math.min(surplus, store.mostIn)
    const stored = Math.min(
      offered,
      taken(store.acceptance, missing, offered * store.chargeEfficiency) / store.chargeEfficiency,
    )
    const after = Math.min(1, soc + (stored * store.chargeEfficiency) / store.capacity)
    return { soc: after, stored, drawn: 0, unserved: 0, curtailed: surplus - stored }
  }
  const left = Math.max(0, (soc - store.floor) * store.capacity * store.dischargeEfficiency)
  const drawn = Math.min(-surplus, left, store.mostOut)
  const after = soc - drawn / (store.dischargeEfficiency * store.capacity)
  return {
    soc: drawn === left ? Math.min(soc, store.floor) : after,
    stored: 0,
    drawn,
    unserved: -surplus - drawn,
    curtailed: 0,
  }
}

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

/**
 * Runs a battery through a list of hours.
 *
 * @param store     battery
 * @param start     state of charge before the first hour [1]
 * @param produced  [Wh] by hour
 * @param load      [Wh] by hour, as many
 */
export function runStore(store: Store, start: number, produced: ArrayLike<number>, load: ArrayLike<number>): StoreRun {
  const field = () => new Float64Array(produced.length)
  const run = { soc: field(), unserved: field(), curtailed: field(), stored: field(), drawn: field() }
  let soc = start
  for (let h = 0; h < produced.length; h++) soc = put(run, h, storeHour(store, soc, produced[h]!, load[h]!))
  return run
}

/**
 * The same hours over and over: the second time, which begins as the first has ended. Full or empty at the same hour both
 * go on alike, so that most of the second time is known already.
 *
 * @param start  state of charge before the first time [1]
 */
export function runTwice(store: Store, start: number, produced: ArrayLike<number>, load: ArrayLike<number>): StoreRun {
  const run = runStore(store, start, produced, load)
  let soc = run.soc.at(-1) ?? start
  for (let h = 0; h < produced.length; h++) {
    const first = run.soc[h]
    soc = put(run, h, storeHour(store, soc, produced[h]!, load[h]!))
    if (soc === first) break
  }
  return run
}

function put(run: StoreRun, h: number, { soc, stored, drawn, unserved, curtailed }: StoreHour): number {
  run.soc[h] = soc
  run.stored[h] = stored
  run.drawn[h] = drawn
  run.unserved[h] = unserved
  run.curtailed[h] = curtailed
  return soc
}
