import { airFactor, ampacity, bundleFactor, metricAmpacity } from '../physics/ampacity.ts'
import { cableDrop, resistancePerMetre } from '../physics/cable.ts'
import type { Cable, ResolvedSystem } from './resolved.ts'

export interface CableFigures {
  /** Of the voltage at its beginning [%]. */
  readonly drop_pct: number | null
  /** Of both conductors, warm [ohm]. */
  readonly resistance_ohm: number
  /** Current that the drop is for [A]. */
  readonly current_a: number
  /** Allowable current in its surroundings [A]; null where the insulation is not known. */
  readonly ampacity_a: number | null
}

/** Where allowable currents come from. */
export const ampacitySource =
  'allowable current by ISO 10133, annex A (from memory) for mm2, by 33 CFR 183.425, table 5 for AWG, and the heat balance of a conductor for other air; guide values, the local code decides'

/** Where a cable lies: air around it and temperature of a loaded conductor, where nothing is said [°C]. Common practice, no source. */
export interface Surroundings {
  readonly air: number
  readonly conductor: number
}
export const onRoof: Surroundings = { air: 60, conductor: 70 }
export const inside: Surroundings = { air: 30, conductor: 60 }

/** What a cable does at a current; null where its size or length is not known. */
export function cableFigures(
  system: ResolvedSystem,
  cable: Cable,
  where: Surroundings,
  current: number | null,
  voltage: number | null,
): CableFigures | null {
  const { size, length } = cable
  if (!size || !length || size.value <= 0 || length.value <= 0 || current === null) return null
  const drop = cableDrop(perMetre(system, cable, size.value, where), length.value, current)
  return {
    drop_pct: voltage !== null && voltage > 0 ? (100 * drop.voltage) / voltage : null,
    resistance_ohm: drop.resistance,
    current_a: current,
    ampacity_a: allowable(cable, size.value, where),
  }
}

/** Allowable current of a cable if it had another size [m2] of the same system; null where size or insulation have no value in the table. */
export function allowable(
  { size: own, insulation, ambient, bundled }: Cable,
  size: number,
  where: Surroundings,
): number | null {
  if (!insulation) return null
  const table = own?.quantity.unit === 'AWG' ? ampacity : metricAmpacity
  const free = table(square(size), insulation.value)
  const air = ambient?.value ?? where.air
  return free === null ? null : free * airFactor(insulation.value, air) * bundleFactor(bundled?.value ?? 2)
}

/** Resistance of one conductor of another size [ohm/m]; boats are wired with tinned strands. */
export function perMetre(system: ResolvedSystem, { ambient }: Cable, size: number, where: Surroundings): number {
  const strand = system.system.kind?.value === 'boat' ? 'class 5 tinned' : 'class 5 plain'
  const conductor = Math.max(where.conductor, ambient ? ambient.value + 10 : where.conductor)
  return resistancePerMetre(square(size), strand, conductor)
}

/** [mm2], so that a nominal size is the table's own number. */
const square = (size: number) => Math.round(size * 1e9) / 1e3
