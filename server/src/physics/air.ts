/**
 * Air temperature through a day, from its highest and lowest.
 *
 *     T = mean + (high - low) (0.4632 cos(t - 3.805) + 0.0984 cos(2t - 0.360) + 0.0168 cos(3t - 0.822) + 0.0138 cos(4t - 3.513))
 *
 * @param hour  solar time [h], 0 to 24
 * @param high  mean of the day's maxima [°C]
 * @param low   mean of the minima [°C]
 * @returns     [°C]
 * @source D. G. Erbs, S. A. Klein, W. A. Beckman, ASHRAE Journal 25 (1983) 60-65 (coefficients from memory)
 */
export function airTemperature(hour: number, high: number, low: number): number {
  const t = (2 * Math.PI * (hour - 1)) / 24
  const swing =
    0.4632 * Math.cos(t - 3.805) +
    0.0984 * Math.cos(2 * t - 0.36) +
    0.0168 * Math.cos(3 * t - 0.822) +
    0.0138 * Math.cos(4 * t - 3.513)
  return (high + low) / 2 + (high - low) * swing
}
