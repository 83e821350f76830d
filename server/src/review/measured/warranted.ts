import type { Panel } from '../../records/records.generated.ts'
import type { ResolvedArray } from '../resolved.ts'
import { lowerTolerance } from './read-strings.ts'

/**
 * Share of the rated power that the warranty promises at an age, of the panel of the array that promises least: the step that
 * lasts until then, less the tolerance of the rating. Null where one promises nothing, or no longer.
 *
 * @param years  since the panels were put up
 */
export function warrantedShare({ panels }: ResolvedArray, years: number): number | null {
  const shares = panels.map(({ panel }) => (panel ? stepAt(panel.record, years) : null))
  return shares.length === 0 || shares.includes(null) ? null : Math.min(...(shares as number[]))
}

function stepAt({ warranty, stc }: Panel, years: number): number | null {
  const steps = warranty.output
    .flatMap((step) => (step.years && step.at_least ? [{ until: step.years.value, share: step.at_least.value }] : []))
    .filter(({ until }) => years <= until)
    .sort((a, b) => a.until - b.until)
  return steps[0] ? steps[0].share * (1 - lowerTolerance(stc.tolerance)) : null
}
