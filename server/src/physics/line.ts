/** A straight line through points. */
export interface Line {
  /** At x = 0. */
  readonly start: number
  readonly slope: number
  /** Standard error of the slope from the scatter of the points, of which at least `scatter` is assumed. */
  readonly slopeError: number
}

/**
 * The line with the least squares of what is left over.
 *
 *     slope = sum (x - mean x) (y - mean y) / sum (x - mean x)^2
 *
 * @param points   [x, y], at least two
 * @param scatter  least standard deviation of a point from the line, where few points happen to be in line
 * @returns        null where all x are the same
 * @source any textbook of statistics
 */
export function lineThrough(points: readonly (readonly [number, number])[], scatter: number): Line | null {
  const count = points.length
  const mean = (of: 0 | 1) => points.reduce((sum, point) => sum + point[of], 0) / count
  const [x, y] = [mean(0), mean(1)]
  const spread = points.reduce((sum, [px]) => sum + (px - x) ** 2, 0)
  if (count < 2 || !(spread > 0)) return null
  const slope = points.reduce((sum, [px, py]) => sum + (px - x) * (py - y), 0) / spread
  const start = y - slope * x
  const left = points.reduce((sum, [px, py]) => sum + (py - start - slope * px) ** 2, 0)
  const deviation = count > 2 ? Math.sqrt(left / (count - 2)) : 0
  return { start, slope, slopeError: Math.max(scatter, deviation) / Math.sqrt(spread) }
}
