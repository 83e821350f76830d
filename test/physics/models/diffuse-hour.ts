/**
 * Diffuse share of an hour's sun on the horizontal, by its clearness.
 *
 * @param clearness  kT, global over extraterrestrial, 0 to about 1
 * @returns          [1]
 * @source D. G. Erbs, S. A. Klein, J. A. Duffie, Solar Energy 28 (1982) 293-302
 */
export function diffuseHour(clearness: number): number {
  const k = clearness
  if (k <= 0.22) return 1 - 0.09 * k
  if (k > 0.8) return 0.165
  return 0.9511 - 0.1604 * k + 4.388 * k ** 2 - 16.638 * k ** 3 + 12.336 * k ** 4
}
