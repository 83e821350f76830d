/**
 * Global sun on the horizontal under a clear sky.
 *
 *     G = 1098 cos(zenith) exp(-0.059 / cos(zenith))
 *
 * @param zenithCosine  of the sun's zenith angle; 0 or less is night
 * @returns             [W/m2]
 * @source B. Haurwitz, J. Meteorology 2 (1945) 154-166 and 3 (1946) 123-124
 */
export function haurwitz(zenithCosine: number): number {
  return zenithCosine <= 0 ? 0 : 1098 * zenithCosine * Math.exp(-0.059 / zenithCosine)
}
