/** One number of a record, as the slip search sees it. */
export interface Reading {
  /** In the base unit: W, V, A, m; a ratio as a fraction; a coefficient in 1/K, or in W/K, V/K, A/K where the text says so. */
  readonly value: number
  /** Half a unit of the last printed digit, in the same unit. */
  readonly half: number
  /** Number and unit as typed: `18.6 V`, `-0.38 %/°C`; a count of cells is a bare number. */
  readonly text: string
  /** The sheet that it was typed from prints the same: whatever is wrong, it is no slip of the hand. */
  readonly isPrinted?: boolean
}

/** What a panel record says of itself, by JSON pointer. */
export interface Evidence {
  readonly technology?: string
  readonly construction?: string
  readonly maker?: string
  /** The product family, by the name that its maker gives it. */
  readonly family?: string
  /** Numbers in the name of the model, one of which is nearly always its power [W]. */
  readonly named?: readonly number[]
  readonly readings: Readonly<Record<string, Reading>>
}

/** The fields that the model knows, in the order of its vectors. */
export const pointers = [
  '/stc/pmax',
  '/stc/vmp',
  '/stc/imp',
  '/stc/voc',
  '/stc/isc',
  '/stc/efficiency',
  '/size/length',
  '/size/width',
  '/temperature_coefficients/pmax',
  '/temperature_coefficients/voc',
  '/temperature_coefficients/isc',
  '/noct/temperature',
  '/noct/pmax',
  '/noct/vmp',
  '/noct/imp',
  '/cells/in_series',
] as const

export type Pointer = (typeof pointers)[number]

/** Index of each field in the vectors. */
export const index = {
  pmax: 0,
  vmp: 1,
  imp: 2,
  voc: 3,
  isc: 4,
  efficiency: 5,
  length: 6,
  width: 7,
  gamma: 8,
  beta: 9,
  alpha: 10,
  noct: 11,
  noctPmax: 12,
  noctVmp: 13,
  noctImp: 14,
  cells: 15,
} as const

const names = [
  'Pmax',
  'Vmp',
  'Imp',
  'Voc',
  'Isc',
  'the printed efficiency',
  'the length',
  'the width',
  'the Pmax coefficient',
]
const moreNames = [
  'the Voc coefficient',
  'the Isc coefficient',
  'NOCT',
  'Pmax at NOCT',
  'Vmp at NOCT',
  'Imp at NOCT',
  'the cell count',
]
const allNames = [...names, ...moreNames]

/** The field in plain words. */
export const nameOf = (field: number): string => allNames[field] ?? ''

export const valueAt = ({ readings }: Evidence, field: number): number | undefined => readings[pointers[field]!]?.value
