import { putPanel } from '../../check/put-panel.ts'
import { correctFirst } from '../../check/with-errors.ts'
import { applyEdits } from '../../text/span.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute, shown } from '../paths.ts'
import { writing } from '../why-not.ts'
import type { World } from '../world.ts'
import type { TableOptions } from '../tables/options.ts'
import type { OnSurface } from './on-surface.ts'
import { surfaceJson } from './surface-json.ts'
import { rowsShown } from './surface-report.ts'
import { phrase } from '../../wording/phrase.ts'

/** Writes a panel of the comparison, its count and its wiring into the system file, and says so as text or JSON. */
export async function writePanel(
  world: World,
  comparison: OnSurface,
  id: string,
  options: TableOptions,
): Promise<string> {
  const { format } = options
  if (format !== 'text' && format !== 'json')
    throw new CouldNotRun(phrase`--write reports what it wrote as text or JSON: leave out --format ${format}`)
  const { path, tree } = comparison.file
  const put = putPanel(comparison, id, world.bundle)
  if ('problem' in put) throw new CouldNotRun(phrase`--write ${id}: ${put.problem}`)
  const name = shown(world.cwd, absolute(world.cwd, path))
  await writing(name, world.rewrite(path, applyEdits(tree.text, put.edits)))
  const { done: said, array, count, strings } = put
  if (format === 'json')
    return surfaceJson(comparison, rowsShown(comparison, options), {
      file: name,
      panel: id,
      count,
      strings,
      array,
      said,
    })
  const wrong = correctFirst(
    comparison.withErrors.filter((one) => one === id),
    world.bundle,
  )
  return [`${name}: ${said}`, ...wrong].map((line) => `${line}\n`).join('')
}
