const birgin =
  'E. Birgin, R. Lobato, R. Morabito, Journal of the Operational Research Society 61 (2010) 306-320, as quoted in the tests of a public palletising program'
const memory =
  'pallet-loading literature since K. Dowsland, European Journal of Operational Research 31 (1987) 78-84; from memory'

const of = (pallet: readonly [number, number], box: readonly [number, number], most: number, source = memory) => ({ pallet, box, most, source }) // prettier-ignore

/**
 * Instances of pallet loading, with the most boxes that lie on the pallet. That no more do follows from a bound each time, so a count
 * that memory had wrong would fail.
 */
export const published = [
  of([42, 39], [9, 4], 45, birgin),
  of([57, 44], [12, 5], 41),
  of([30, 22], [7, 4], 23),
  of([86, 82], [15, 11], 42),
  of([40, 25], [7, 3], 47),
  of([52, 33], [9, 4], 47),
  of([56, 52], [12, 5], 48),
  of([53, 51], [9, 7], 42),
  of([124, 81], [21, 10], 47),
  of([22, 16], [5, 3], 23),
  of([14, 10], [3, 2], 23),
  of([16, 11], [3, 2], 29),
]
