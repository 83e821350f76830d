/** Coordinates that the features are made of; logarithms but for the coefficients [%/K] and NOCT [°C]. */
export const coordinate = {
  cells: 0,
  area: 1,
  voc: 2,
  isc: 3,
  vmp: 4,
  imp: 5,
  gamma: 6,
  beta: 7,
  alpha: 8,
  noct: 9,
  noctImp: 10,
  noctVmp: 11,
} as const

export const coordinates = 12

type Name = keyof typeof coordinate

const feature = (terms: Partial<Record<Name, number>>): readonly number[] => {
  const row = new Array<number>(coordinates).fill(0)
  for (const [name, sign] of Object.entries(terms)) row[coordinate[name as Name]] = sign
  return row
}

/**
 * What is alike in true records: Voc per cell, Isc x cells / area, Vmp/Voc, Imp/Isc, the three coefficients, NOCT, and the
 * ratios of the NOCT row. Each row gives the factors of the coordinates.
 */
export const features: readonly (readonly number[])[] = [
  feature({ voc: 1, cells: -1 }),
  feature({ isc: 1, cells: 1, area: -1 }),
  feature({ vmp: 1, voc: -1 }),
  feature({ imp: 1, isc: -1 }),
  feature({ gamma: 1 }),
  feature({ beta: 1 }),
  feature({ alpha: 1 }),
  feature({ noct: 1 }),
  feature({ noctImp: 1, imp: -1 }),
  feature({ noctVmp: 1, vmp: -1 }),
]

/**
 * The features that can be formed from what is present, each as factors of `features`. Without a cell count the first two
 * join to Voc Isc / area.
 */
export function usable(present: readonly boolean[]): readonly (readonly number[])[] {
  const formed = (row: readonly number[]) => row.every((factor, i) => factor === 0 || present[i])
  const unit = (i: number) => features.map((_, j) => (i === j ? 1 : 0))
  const rows = features.flatMap((row, i) => (formed(row) ? [unit(i)] : []))
  const joined = present[coordinate.area] && present[coordinate.voc] && present[coordinate.isc]
  return !present[coordinate.cells] && joined ? [features.map((_, j) => (j < 2 ? 1 : 0)), ...rows] : rows
}
