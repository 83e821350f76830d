import { putPanel } from '../../check/put-panel.ts'
import { correctFirst } from '../../check/with-errors.ts'
import { applyEdits } from '../../text/span.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute, shown } from '../paths.ts'
import { writing } from '../why-not.ts'
import type { World } from '../world.ts'
import type { OnSurface } from './on-surface.ts'
import { phrase } from '../../wording/phrase.ts'

/** Writes a panel of the comparison, its count and its wiring into the system file. */
export async function writePanel(world: World, comparison: OnSurface, id: string): Promise<string> {
  const { path, tree } = comparison.file
  const put = putPanel(comparison, id, world.bundle)
  if ('problem' in put) throw new CouldNotRun(phrase`--write ${id}: ${put.problem}`)
  const name = shown(world.cwd, absolute(world.cwd, path))
  await writing(name, world.rewrite(path, applyEdits(tree.text, put.edits)))
  const wrong = correctFirst(
    comparison.withErrors.filter((one) => one === id),
    world.bundle,
  )
  return [`${name}: ${put.done}`, ...wrong].map((line) => `${line}\n`).join('')
}
