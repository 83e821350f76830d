import type { Trend } from './power-left.ts'

/** What the trend comes to, after the pace: when it crosses the warranty, or that it does not. */
export function endingInWords({ crosses, points }: Pick<Trend, 'crosses' | 'points'>): string {
  if (crosses !== null) return `below the warranty from ${crosses}`
  const isWarranted = (points.at(-1)?.warranted ?? null) !== null
  return isWarranted ? 'not below the warranty while it runs' : 'no warranty to compare it with'
}
