import type { Trend } from './power-left.ts'
import { phrase, type Phrase } from '../../wording/phrase.ts'

/** What the trend comes to, after the pace: when it crosses the warranty, or that it does not. */
export function endingInWords({ crosses, points }: Pick<Trend, 'crosses' | 'points'>): Phrase {
  if (crosses !== null) return phrase`below the warranty from ${crosses}`
  const isWarranted = (points.at(-1)?.warranted ?? null) !== null
  return isWarranted ? phrase`not below the warranty while it runs` : phrase`no warranty to compare it with`
}
