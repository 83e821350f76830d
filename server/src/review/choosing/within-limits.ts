import type { ResolvedArray } from '../resolved.ts'
import { overLimit } from './excluded.ts'
import { laidArray, systemWith, type Target } from './laid-array.ts'
import type { Candidate, ControllerChoice, Strings } from './row.ts'
import { stringsFor, takesOf } from './strings-for.ts'
import type { Bundle } from '../../wording/bundle.ts'

export interface Chosen {
  readonly strings: Strings | null
  readonly array: ResolvedArray
  /** Which limit is exceeded, even by the fewest panels; null where it is kept. */
  readonly over: string | null
}

/** As many of the panels that fit as can be wired and keep the customer's limits of weight and money. */
export function withinLimits(
  target: Target,
  candidate: Candidate,
  count: number,
  own: ControllerChoice | undefined,
  library: readonly ControllerChoice[],
  bundle?: Bundle,
): Chosen {
  const takes = takesOf(target, candidate)
  let chosen = chosenOf(count)
  while (chosen.over !== null) {
    const { in_series: series, in_parallel: parallel } = chosen.strings ?? { in_series: 1, in_parallel: chosen.count }
    if (series * parallel <= 1) break
    const fewer = chosenOf(series * parallel - 1)
    if (!fewer.strings && chosen.strings) break
    chosen = fewer
  }
  return chosen

  function chosenOf(panels: number): Chosen & { readonly count: number } {
    const wired = stringsFor(takes, panels, own, library)
    const strings = wired?.strings ?? null
    const wiring = strings ? ([strings.in_series, strings.in_parallel] as const) : ([1, panels] as const)
    const array = laidArray(target, candidate, wiring, wired?.choice ?? own)
    return { strings, array, over: overLimit(systemWith(target, array), bundle), count: panels }
  }
}
