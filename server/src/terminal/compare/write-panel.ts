import { setScalar } from '../../text/edits.ts'
import { applyEdits } from '../../text/span.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute, shown } from '../paths.ts'
import type { World } from '../world.ts'
import type { Place } from '../../review/choosing/laid-array.ts'
import type { SurfaceComparison } from './on-surface.ts'

/** Puts a panel of the comparison, its count and its wiring into the system file; every other character stays. */
export async function writePanel(world: World, { file, place, rows }: SurfaceComparison, id: string): Promise<string> {
  const row = rows.find(({ panel }) => panel === id)
  const name = shown(world.cwd, absolute(world.cwd, file.path))
  if (!row) throw new CouldNotRun(`--write ${id}: there is no such panel in the comparison`)
  if (row.excluded !== null) throw new CouldNotRun(`--write ${id}: ${row.excluded}`)
  const { strings } = row
  if (!strings) throw new CouldNotRun(`--write ${id}: without a controller its wiring is not known`)
  const count = strings.in_series * strings.in_parallel
  const { panel, count: countField, series, parallel } = fieldsOf(place)
  const edits = [
    setScalar(file.tree, panel, id),
    setScalar(file.tree, countField, String(count)),
    setScalar(file.tree, series, String(strings.in_series)),
    setScalar(file.tree, parallel, String(strings.in_parallel)),
  ]
  await world.rewrite(file.path, applyEdits(file.tree.text, edits))
  const own = place.array?.entry.controller.id?.value
  const note =
    own === undefined || own === strings.controller
      ? ''
      : `; they need the controller ${strings.controller}, not ${own}`
  return `${name}: ${count} x ${id} on ${place.surface.id?.value}, ${strings.in_series} in series x ${strings.in_parallel}${note}\n`
}

/** Pointers of what changes; only an array with one kind of panels, which all lie on the surface, has one place for each. */
function fieldsOf({ array, surface }: Place) {
  const id = surface.id?.value
  if (!array) throw new CouldNotRun(`--write: no array lies on ${id}; add one to the system, or name one with --array`)
  const [only, ...more] = array.panels
  const { in_series: series, in_parallel: parallel } = array.entry.wiring
  if (!only || more.length > 0 || only.surface !== surface)
    throw new CouldNotRun(`--write: the array has to hold one kind of panels, all on ${id}`)
  const { panel, count } = only.entry
  if (!panel.id || !count || !series || !parallel)
    throw new CouldNotRun('--write: the array has to name panel, count, in_series and in_parallel, which are replaced')
  return {
    panel: panel.id.pointer,
    count: count.pointer,
    series: series.pointer,
    parallel: parallel.pointer,
  }
}
