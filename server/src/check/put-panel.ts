import type { Strings } from '../review/choosing/row.ts'
import type { Edit } from '../text/span.ts'
import type { Bundle } from '../wording/bundle.ts'
import { inARow, named, phrase, sayIn, type Phrase } from '../wording/phrase.ts'
import { filledArray } from './filled-array.ts'
import { newArray } from './new-array.ts'
import type { SurfaceComparison } from './surface-comparison.ts'
import { unplacedArrays } from './target-on.ts'

/** What is to change in a system so that a panel lies on a surface, and what was done in words; or why that cannot be. */
export type Put = Done | { readonly problem: Phrase }

interface Done {
  readonly edits: readonly Edit[]
  readonly done: string
  readonly count: number
  readonly strings: Strings
  /** Id of the array, which may be a new one; null where it has none. */
  readonly array: string | null
}

/**
 * Puts a panel of the comparison, its count and its wiring into the system, as a new array where none lies on the surface; every
 * other character stays.
 */
export function putPanel(comparison: SurfaceComparison, id: string, bundle: Bundle | undefined): Put {
  const { tree, target, rows } = comparison
  const row = rows.find(({ panel }) => panel === id)
  if (!row) return { problem: phrase`there is no such panel in the comparison` }
  if (row.excluded !== null) return { problem: named(row.excluded) }
  const { strings } = row
  if (!strings) return { problem: phrase`how it is wired follows from a controller, and the library has no controller` }
  const say = sayIn(bundle)
  const unplaced = unplacedArrays(target.system).map(({ entry }) => entry.id?.value ?? phrase`one without an id`)
  if (!target.array && unplaced.length > 0)
    return {
      problem: phrase`the panels of an array name no surface (${inARow(unplaced, ', ')}): name the one that lies on ${target.surface.id?.value} with --array, or its surface in the file`,
    }
  const put = target.array ? filledArray(tree, target, id, strings, bundle) : newArray(comparison, id, strings, bundle)
  if ('problem' in put) return put
  const { in_series: series, in_parallel: parallel } = strings
  const count = series * parallel
  return {
    edits: put.edits,
    count,
    strings,
    array: put.array,
    done: say`${count} x ${id} on ${target.surface.id?.value}, ${series} in series x ${parallel}${put.note}`,
  }
}
