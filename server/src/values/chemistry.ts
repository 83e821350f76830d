import { chemistries as typical } from '../physics/battery-chemistry.ts'
import type { Battery } from '../records/records.generated.ts'

export type Chemistry = NonNullable<Battery['chemistry']>['value']
type Band = readonly [number, number]

/** What is usual of a kind of battery. It fills gaps and shows odd values; the maker's sheet always wins. */
export interface ChemistryFacts {
  readonly name: string
  readonly lithium: boolean
  /** Nominal voltage of a cell [V]. */
  readonly cell: Band
  /** Charge (absorption) voltage of a cell that no maker would be odd to print [V]. */
  readonly charge: Band
  /** Absorption voltage of a cell, where the sheet says nothing [V]. */
  readonly absorption: number
  /** Share of the capacity that is used daily, where the sheet says nothing. */
  readonly usableDepth: number
  /** Deepest daily use that it is made for. */
  readonly deepest: number
  /** Energy out over energy in, where the sheet says nothing. */
  readonly roundTrip: number
  /** Most charge current over capacity, where the sheet says nothing [1/h]. */
  readonly chargeRate: number
  /** Charge current that it takes near full, over the charge that it lacks [1/h]. */
  readonly acceptance: number
  /** Lowest temperature for charging, where the sheet says nothing [°C]. */
  readonly coldest: number
  /** The same for discharging [°C]. */
  readonly coldestInUse: number
  /** [Wh/kg] */
  readonly energyPerWeight: Band
}

/** Trade values, to be confirmed on the maker's sheet. */
export const chemistries: Readonly<Record<Chemistry, ChemistryFacts>> = {
  flooded: facts('flooded', 'flooded lead-acid', [2, 2], 0.8),
  agm: facts('agm', 'AGM', [2, 2], 0.8),
  gel: facts('gel', 'gel', [2, 2], 0.8),
  lifepo4: facts('lifepo4', 'LiFePO4', [3.2, 3.3], 1),
  nmc: facts('nmc', 'NMC', [3.6, 3.7], 1),
}

export function middle([low, high]: Band): number {
  return (low + high) / 2
}

/** Cells in series of one battery: as typed, or the number whose nominal voltage comes closest; undefined where none does. */
export function cellsOf(battery: Battery): number | undefined {
  const { chemistry, nominal_voltage: nominal, cells_in_series: cells } = battery
  if (cells) return cells.value
  if (!chemistry || !nominal || nominal.value <= 0) return undefined
  const { cell } = chemistries[chemistry.value]
  const count = Math.round(nominal.value / middle(cell))
  return count >= 1 && cell[0] * 0.98 <= nominal.value / count && nominal.value / count <= cell[1] * 1.02
    ? count
    : undefined
}

/** Charge voltage of one battery: as typed, else what is usual for its chemistry; undefined where neither is known. */
export function chargeVoltage(battery: Battery): number | undefined {
  if (battery.charge.voltage) return battery.charge.voltage.value
  const cells = cellsOf(battery)
  return battery.chemistry && cells !== undefined ? chemistries[battery.chemistry.value].absorption * cells : undefined
}

function facts(key: Chemistry, name: string, cell: Band, deepest: number): ChemistryFacts {
  const { absorption, usableDepth, roundTrip, chargeRate, acceptance, charging, discharging, specificEnergy } =
    typical[key]
  const lithium = key === 'lifepo4' || key === 'nmc'
  return {
    name,
    lithium,
    cell,
    charge: [absorption[0] - 0.05, absorption[1] + (lithium ? 0 : 0.02)],
    absorption: middle(absorption),
    usableDepth,
    deepest,
    roundTrip: middle(roundTrip),
    chargeRate,
    acceptance,
    coldest: charging[0],
    coldestInUse: discharging[0],
    energyPerWeight: specificEnergy,
  }
}
