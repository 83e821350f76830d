import { diodeAt, type DiodeModel } from './diode-model.ts'
import { currentAt, maxPower } from './single-diode.ts'

/** Maximum power by irradiance and cell temperature, on a grid. Its points are worked out when first needed: a year needs a third of them. */
export interface PowerTable {
  /** Power over irradiance [m2], rows by the root of the irradiance, columns by temperature; NaN where not worked out yet. */
  readonly ratio: Float64Array
  /** The same between the corners of each field, see `ratioIn`; four numbers for each [m2]. */
  readonly fields: Float64Array
  /** 1 for each field of the grid whose four corners are worked out. */
  readonly known: Uint8Array
  readonly power: (irradiance: number, temperature: number) => number
}

const brightest = 1500
const coldest = -50
const hottest = 110
const rows = 25
const columns = 17
const step = (hottest - coldest) / (columns - 1)

/**
 * Power of a diode model on a grid, so that a year of hours costs no more than looking up. Between the points it is within
 * 0.03 % of the rated power.
 *
 * @param model  at standard test conditions
 */
export function powerTable(model: DiodeModel): PowerTable {
  return empty((irradiance, temperature) => maxPower(diodeAt(model, irradiance, temperature)).p)
}

/**
 * Power into a battery that holds a panel at its voltage, on the same grid; 0 where the panel cannot reach it.
 *
 *     P = V I(V + drop)
 *
 * @param model    at standard test conditions
 * @param voltage  V, of the battery, as it falls to one panel [V]
 * @param drop     between panel and battery [V]
 */
export function clampedPowerTable(model: DiodeModel, voltage: number, drop: number): PowerTable {
  return empty((irradiance, temperature) =>
    Math.max(0, voltage * currentAt(diodeAt(model, irradiance, temperature), voltage + drop)),
  )
}

/**
 * The same as `powerTable` where no diode fits the datasheet: power goes with the sun and linearly with temperature.
 *
 *     P = Pmax G/1000 (1 + gamma (T - 25 °C)), at least 0
 *
 * @param pmax   [W]
 * @param gamma  relative [1/K]
 * @source definition of the coefficient; too high by some 5 % at 200 W/m2
 */
export function linearPowerTable(pmax: number, gamma: number): PowerTable {
  return empty((irradiance, temperature) => pmax * (irradiance / 1000) * Math.max(0, 1 + gamma * (temperature - 25)))
}

/**
 * Power at an irradiance and cell temperature.
 *
 * @param table        see `powerTable`
 * @param irradiance   in the plane, less what the face reflects [W/m2]; above 1500 as at 1500 but in proportion
 * @param temperature  of the cell [°C]; beyond -50 to 110 as at the end
 * @returns            [W]; 0 in the dark
 */
export function powerAt(table: PowerTable, irradiance: number, temperature: number): number {
  if (!(irradiance > 0)) return 0
  const x = acrossRows(irradiance)
  const y = acrossColumns(temperature)
  const i = Math.min(Math.floor(x), rows - 2)
  const j = Math.min(Math.floor(y), columns - 2)
  const at = i * columns + j
  if (!table.known[at]) workOut(table, at)
  return irradiance * ratioIn(table.fields, at, x - i, y - j)
}

/** Where hours lie on the grid: the same for all panels that see the same light and get as warm. */
export interface GridPlaces {
  readonly irradiance: Float64Array
  /** Field of the grid, and how far into it down the rows and across the columns [1]. */
  readonly at: Uint16Array
  readonly down: Float64Array
  readonly across: Float64Array
  /** Every field in which an hour lies, once. */
  readonly fields: readonly number[]
}

/** @param irradiance, temperature  by hour, as for `powerAt` */
export function gridPlaces(irradiance: Float64Array, temperature: Float64Array): GridPlaces {
  const count = irradiance.length
  const at = new Uint16Array(count)
  const [down, across, bright] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)]
  const isMet = new Uint8Array(rows * columns)
  for (let n = 0; n < count; n++) {
    bright[n] = Math.max(0, irradiance[n]!)
    const x = acrossRows(bright[n]!)
    const y = acrossColumns(temperature[n]!)
    const i = Math.min(Math.floor(x), rows - 2)
    const j = Math.min(Math.floor(y), columns - 2)
    at[n] = i * columns + j
    isMet[i * columns + j] = 1
    down[n] = x - i
    across[n] = y - j
  }
  return { irradiance: bright, at, down, across, fields: [...isMet.keys()].filter((field) => isMet[field] === 1) }
}

/** So many times what `powerAt` gives for each hour, written over `into` [W]. */
export function powersOf(table: PowerTable, places: GridPlaces, count: number, into: Float64Array): void {
  const { irradiance, at, down, across } = places
  const fields = fieldsFor(table, places)
  for (let n = 0; n < into.length; n++) into[n] = count * irradiance[n]! * ratioIn(fields, at[n]!, down[n]!, across[n]!)
}

/** The fields of a table, worked out wherever one of the hours lies. */
function fieldsFor(table: PowerTable, places: GridPlaces): Float64Array {
  for (const field of places.fields) if (!table.known[field]) workOut(table, field)
  return table.fields
}

/**
 * Power over irradiance in a field of the grid [m2]: straight along both of its sides.
 *
 * @param at            number of the field
 * @param down, across  how far into it, down the rows and across the columns, 0 to 1
 */
function ratioIn(fields: Float64Array, at: number, down: number, across: number): number {
  const first = 4 * at
  return fields[first]! + across * fields[first + 1]! + down * (fields[first + 2]! + across * fields[first + 3]!)
}

const acrossRows = (irradiance: number) => Math.min(Math.sqrt(irradiance / brightest) * (rows - 1), rows - 1)

const acrossColumns = (temperature: number) => Math.min(Math.max((temperature - coldest) / step, 0), columns - 1)

function workOut({ ratio, fields, known, power }: PowerTable, field: number): void {
  const [row, column] = [Math.floor(field / columns), field % columns]
  for (let i = row; i <= row + 1; i++) {
    const irradiance = brightest * (Math.max(i, 0.25) / (rows - 1)) ** 2
    for (let j = column; j <= column + 1; j++) {
      const at = i * columns + j
      if (Number.isNaN(ratio[at])) ratio[at] = power(irradiance, coldest + j * step) / irradiance
    }
  }
  const [upper, lower] = [ratio[field]!, ratio[field + columns]!]
  const along = ratio[field + 1]! - upper
  fields.set([upper, along, lower - upper, ratio[field + columns + 1]! - lower - along], 4 * field)
  known[field] = 1
}

function empty(power: PowerTable['power']): PowerTable {
  const count = rows * columns
  const fields = new Float64Array(4 * count)
  return { ratio: new Float64Array(count).fill(NaN), fields, known: new Uint8Array(count), power }
}
