import type { Proposal } from '../rules/rule.ts'
import type { ResolvedArray } from './resolved.ts'
import { countOf } from './strings.ts'

/** The same panels in shorter strings: the longest of at most so many that leaves no panel over. */
export function fewerInSeries(
  array: ResolvedArray,
  most: number,
  why: (series: number) => string,
): Proposal | undefined {
  const { in_series: series, in_parallel: parallel } = array.entry.wiring
  if (!series || !parallel) return undefined
  const count = array.panels.reduce((sum, panels) => sum + countOf(panels), 0)
  for (let next = Math.min(most, series.value - 1); next >= 1; next--) {
    if (count % next !== 0) continue
    const strings = count / next
    return {
      field: series,
      text: String(next),
      why: why(next),
      certainty: 'guess',
      ...(strings !== parallel.value && { also: [{ field: parallel, text: String(strings) }] }),
    }
  }
  return undefined
}
