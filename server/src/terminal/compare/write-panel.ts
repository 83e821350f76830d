import type { Target } from '../../review/choosing/laid-array.ts'
import type { Strings } from '../../review/choosing/row.ts'
import { setScalar } from '../../text/edits.ts'
import { applyEdits, type Edit } from '../../text/span.ts'
import type { Tree } from '../../text/tree.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute, shown } from '../paths.ts'
import type { World } from '../world.ts'
import { newArray } from './new-array.ts'
import type { SurfaceComparison } from './on-surface.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { named, phrase, sayIn } from '../../wording/phrase.ts'

/**
 * Puts a panel of the comparison, its count and its wiring into the system file, as a new array where none lies on the surface; every
 * other character stays.
 */
export async function writePanel(world: World, comparison: SurfaceComparison, id: string): Promise<string> {
  const { file, place, rows } = comparison
  const row = rows.find(({ panel }) => panel === id)
  const name = shown(world.cwd, absolute(world.cwd, file.path))
  if (!row) throw new CouldNotRun(phrase`--write ${id}: there is no such panel in the comparison`)
  if (row.excluded !== null) throw new CouldNotRun(phrase`--write ${id}: ${named(row.excluded)}`)
  const { strings } = row
  if (!strings)
    throw new CouldNotRun(
      phrase`--write ${id}: how it is wired follows from a controller, and the library has no controller`,
    )
  const say = sayIn(world.bundle)
  const { edits, note } = place.array
    ? { edits: replaced(file.tree, place, id, strings), note: otherController(place, strings, world.bundle) }
    : newArray(comparison, id, strings, world.bundle)
  await world.rewrite(file.path, applyEdits(file.tree.text, edits))
  const { in_series: series, in_parallel: parallel } = strings
  return `${say`${name}: ${series * parallel} x ${id} on ${place.surface.id?.value}, ${series} in series x ${parallel}${note}`}\n`
}

function replaced(
  tree: Tree,
  place: Target,
  id: string,
  { in_series: series, in_parallel: parallel }: Strings,
): Edit[] {
  const fields = fieldsOf(place)
  return [
    setScalar(tree, fields.panel, id),
    setScalar(tree, fields.count, String(series * parallel)),
    setScalar(tree, fields.series, String(series)),
    setScalar(tree, fields.parallel, String(parallel)),
  ]
}

function otherController({ array }: Target, { controller }: Strings, bundle: Bundle | undefined): string {
  const own = array?.entry.controller.id?.value
  return own === undefined || own === controller
    ? ''
    : sayIn(bundle)`; they need the controller ${controller}, not ${own}`
}

/** Pointers of what changes; only an array with one kind of panels, which all lie on the surface, has one place for each. */
function fieldsOf({ array, surface }: Target) {
  const [only, ...more] = array?.panels ?? []
  const { in_series: series, in_parallel: parallel } = array?.entry.wiring ?? {}
  if (!only || more.length > 0 || only.surface !== surface)
    throw new CouldNotRun(phrase`--write: the array has to hold one kind of panels, all on ${surface.id?.value}`)
  const { panel, count } = only.entry
  if (!panel.id || !count || !series || !parallel)
    throw new CouldNotRun(
      phrase`--write: the array has to name panel, count, in_series and in_parallel, which are replaced`,
    )
  return {
    panel: panel.id.pointer,
    count: count.pointer,
    series: series.pointer,
    parallel: parallel.pointer,
  }
}
