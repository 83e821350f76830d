import type { Target } from '../review/choosing/laid-array.ts'
import type { Strings } from '../review/choosing/row.ts'
import { setScalar } from '../text/edits.ts'
import type { Edit } from '../text/span.ts'
import type { Tree } from '../text/tree.ts'
import type { Bundle } from '../wording/bundle.ts'
import { named, phrase, sayIn, type Phrase } from '../wording/phrase.ts'
import { newArray } from './new-array.ts'
import type { SurfaceComparison } from './surface-comparison.ts'

/** What is to change in a system so that a panel lies on a surface, and what was done in words; or why that cannot be. */
export type Put = { readonly edits: readonly Edit[]; readonly done: string } | { readonly problem: Phrase }

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
  const put = target.array ? replaced(tree, target, id, strings, bundle) : newArray(comparison, id, strings, bundle)
  if ('problem' in put) return put
  const { in_series: series, in_parallel: parallel } = strings
  return {
    edits: put.edits,
    done: say`${series * parallel} x ${id} on ${target.surface.id?.value}, ${series} in series x ${parallel}${put.note}`,
  }
}

function replaced(tree: Tree, target: Target, id: string, strings: Strings, bundle: Bundle | undefined) {
  const fields = fieldsOf(target)
  if ('problem' in fields) return fields
  const { in_series: series, in_parallel: parallel } = strings
  const edits = [
    setScalar(tree, fields.panel, id),
    setScalar(tree, fields.count, String(series * parallel)),
    setScalar(tree, fields.series, String(series)),
    setScalar(tree, fields.parallel, String(parallel)),
  ]
  return { edits, note: otherController(target, strings, bundle) }
}

function otherController({ array }: Target, { controller }: Strings, bundle: Bundle | undefined): string {
  const own = array?.entry.controller.id?.value
  return own === undefined || own === controller
    ? ''
    : sayIn(bundle)`; they need the controller ${controller}, not ${own}`
}

/** Pointers of what changes; only an array with one kind of panels, which all lie on the surface, has one place for each. */
function fieldsOf({ array, surface }: Target): Fields | { readonly problem: Phrase } {
  const [only, ...more] = array?.panels ?? []
  const { in_series: series, in_parallel: parallel } = array?.entry.wiring ?? {}
  if (!only || more.length > 0 || only.surface !== surface)
    return { problem: phrase`the array has to hold one kind of panels, all on ${surface.id?.value}` }
  const { panel, count } = only.entry
  if (!panel.id || !count || !series || !parallel)
    return { problem: phrase`the array has to name panel, count, in_series and in_parallel, which are replaced` }
  return {
    panel: panel.id.pointer,
    count: count.pointer,
    series: series.pointer,
    parallel: parallel.pointer,
  }
}

type Fields = Readonly<Record<'panel' | 'count' | 'series' | 'parallel', string>>
