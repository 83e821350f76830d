import type { Battery } from '../records/records.generated.ts'

export type Chemistry = NonNullable<Battery['chemistry']>['value']
type Band = readonly [number, number]

/** What is usual of a kind of battery. It fills gaps and shows odd values; the maker's sheet always wins. */
export interface ChemistryFacts {
  readonly name: string
  readonly lithium: boolean
  /** Nominal voltage of a cell [V]. */
  readonly cell: Band
  /** Charge (absorption) voltage of a cell [V]. */
  readonly charge: Band
  /** Share of the capacity that is used daily, where the sheet says nothing. */
  readonly usableDepth: number
  /** Deepest daily use that it is made for. */
  readonly deepest: number
  /** Energy out over energy in. */
  readonly roundTrip: Band
  /** Most charge current over capacity [1/h]. */
  readonly chargeRate: number
  /** Lowest temperature for charging [°C]. */
  readonly coldest: number
  /** [Wh/kg] */
  readonly energyPerWeight: Band
}

/** Trade values (from memory, to be confirmed on the maker's sheet); LiFePO4 voltages after makers' teaching pages. */
export const chemistries: Readonly<Record<Chemistry, ChemistryFacts>> = {
  flooded: lead('flooded lead-acid', [2.4, 2.5], 0.25, [0.7, 0.85]),
  agm: lead('AGM', [2.36, 2.47], 0.3, [0.75, 0.88]),
  gel: lead('gel', [2.3, 2.42], 0.2, [0.75, 0.88]),
  lifepo4: {
    name: 'LiFePO4',
    lithium: true,
    cell: [3.2, 3.3],
    charge: [3.4, 3.65],
    usableDepth: 0.8,
    deepest: 1,
    roundTrip: [0.92, 0.97],
    chargeRate: 1,
    coldest: 0,
    energyPerWeight: [80, 130],
  },
  nmc: {
    name: 'NMC',
    lithium: true,
    cell: [3.6, 3.7],
    charge: [4.05, 4.2],
    usableDepth: 0.8,
    deepest: 1,
    roundTrip: [0.9, 0.96],
    chargeRate: 1,
    coldest: 0,
    energyPerWeight: [130, 220],
  },
}

export const middle = ([low, high]: Band): number => (low + high) / 2

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

/** Charge voltage of one battery: as typed, else the middle of what is usual for its chemistry; undefined where neither is known. */
export function chargeVoltage(battery: Battery): number | undefined {
  if (battery.charge.voltage) return battery.charge.voltage.value
  const cells = cellsOf(battery)
  return battery.chemistry && cells !== undefined
    ? middle(chemistries[battery.chemistry.value].charge) * cells
    : undefined
}

function lead(name: string, charge: Band, chargeRate: number, roundTrip: Band): ChemistryFacts {
  return {
    name,
    lithium: false,
    cell: [2, 2],
    charge,
    usableDepth: 0.5,
    deepest: 0.8,
    roundTrip,
    chargeRate,
    coldest: -20,
    energyPerWeight: [25, 40],
  }
}
