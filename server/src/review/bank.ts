import { chemistries as typical } from '../physics/battery-chemistry.ts'
import { chargeVoltage, chemistries } from '../values/chemistry.ts'
import { controllersOf, sumOf, type ControllerGroup } from './controllers.ts'
import { arrayIsc, arrayPmax } from './strings.ts'
import type { ResolvedArray, ResolvedSystem } from './resolved.ts'

/** The whole bank, from the batteries in it. */
export interface Bank {
  /** Nominal, and while charging [V]. */
  readonly voltage: number
  readonly charging: number
  /** Under load and nearly empty, see `Chemistry`. */
  readonly lowest: number
  /** [Ah] */
  readonly amperehours: number
  /** Full [Wh]. */
  readonly energy: number
  /** Share of it that may be used. */
  readonly depth: number
  readonly roundTrip: number
  readonly lithium: boolean
  /** Most that may go in and come out [A]; the first from the chemistry where the sheet says nothing. */
  readonly mostIn: number
  readonly mostInTyped: boolean
  readonly mostOut: number
  /** How fast it takes charge near full, see `Store` [1/h]. */
  readonly acceptance: number
}

/** Null where voltage, capacity or chemistry is not known, or there is no battery in series or in parallel. */
export function bankOf({ battery, system }: ResolvedSystem): Bank | null {
  const record = battery?.record
  const { chemistry, nominal_voltage: nominal, capacity } = record ?? {}
  if (!record || !chemistry || !nominal || !capacity?.amount || nominal.value <= 0 || capacity.amount.value <= 0)
    return null
  const facts = chemistries[chemistry.value]
  const series = system.battery.in_series?.value ?? 1
  const parallel = system.battery.in_parallel?.value ?? 1
  const { max_current: mostIn } = record.charge
  const { round_trip_efficiency: roundTrip } = record
  const amperehours = capacity.amount.value * parallel
  const voltage = nominal.value * series
  if (amperehours <= 0 || voltage <= 0) return null
  return {
    voltage,
    lowest: lowestVoltage(chemistry.value, voltage),
    charging: (chargeVoltage(record) ?? nominal.value) * series,
    amperehours,
    energy: amperehours * voltage,
    depth: Math.min(1, record.usable_depth?.value ?? facts.usableDepth),
    roundTrip: roundTrip && 0 < roundTrip.value ? Math.min(1, roundTrip.value) : facts.roundTrip,
    lithium: facts.lithium,
    mostIn: mostIn ? mostIn.value * parallel : facts.chargeRate * amperehours,
    mostInTyped: mostIn !== undefined,
    mostOut: record.discharge.max_current ? record.discharge.max_current.value * parallel : Infinity,
    acceptance: facts.acceptance,
  }
}

function lowestVoltage(chemistry: keyof typeof typical, nominal: number): number {
  const { cellVoltage, lowestVoltage: ofCell } = typical[chemistry]
  return Math.max(1, Math.round(nominal / cellVoltage)) * ofCell
}

/** Where a controller says nothing (common practice, no source). */
export const usualEfficiency = { mppt: 0.96, pwm: 0.99 }

export const controllerEfficiency = ({ controller }: ResolvedArray): number =>
  controller?.record.efficiency?.value ?? usualEfficiency[controller?.record.type?.value ?? 'mppt']

/**
 * Current into the battery that a controller can reach [A]: what its panels give, or what it passes. One that only switches
 * passes the panels' own current, and in bright sun more than its rating does not stop it.
 */
export function chargeCurrent(group: ControllerGroup, bank: Bank): number | null {
  const [array] = group.arrays
  if (group.controller?.record.type?.value === 'pwm') return sumOf(group, arrayIsc)
  const pmax = sumOf(group, arrayPmax)
  const most = group.controller?.record.output.max_current?.value ?? Infinity
  return pmax === null ? null : Math.min(most, (pmax * controllerEfficiency(array)) / bank.voltage)
}

/** What charges the bank, each at its most [A]. */
export function chargeParts(system: ResolvedSystem, bank: Bank): readonly { name: string; amps: number }[] {
  return [
    ...controllersOf(system).map((one) => ({
      name: one.arrays.map(({ entry }) => entry.id?.text ?? 'array').join(' and '),
      amps: chargeCurrent(one, bank) ?? 0,
    })),
    ...system.system.other_sources.map(({ name, power }) => ({
      name: name?.text ?? 'another source',
      amps: (power?.value ?? 0) / bank.voltage,
    })),
  ]
}

/** Current of all sources together [A]. */
export const allChargeCurrent = (system: ResolvedSystem, bank: Bank): number =>
  chargeParts(system, bank).reduce((sum, { amps }) => sum + amps, 0)

/** As typed, or what is usual (common practice, no source). */
export const inverterEfficiency = (typed: number | undefined): number =>
  typed && typed > 0 ? Math.min(1, typed) : 0.88

/** What the main fuse of a bank must be able to break [A]. @source ABYC E-11 for lead-acid (from memory); for lithium common practice, no source */
export const leastRating = ({ lithium }: Bank): number => (lithium ? 10_000 : 5_000)
