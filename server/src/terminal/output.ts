import { recordOfPath } from '../records/kinds.ts'
import { CouldNotRun } from './could-not-run.ts'
import { absolute } from './paths.ts'
import { whyNotWritten, writing } from './why-not.ts'
import type { World } from './world.ts'
import { phrase } from '../wording/phrase.ts'

/**
 * Writes what `-o` asks for, whole or not at all.
 *
 * @throws CouldNotRun  for a record, which is never overwritten, and for a file that cannot be written
 */
export async function writeOutput(world: World, output: string, text: string): Promise<void> {
  const path = absolute(world.cwd, output)
  const target = (await world.standing(path)) ? await world.followed(path) : path
  if (recordOfPath(path) || recordOfPath(target))
    throw new CouldNotRun(phrase`\`${output}\` is a record and stays as it is`)
  await writing(output, world.write(path, text))
}

/** Adds to the page that the service shows of a run. */
export async function writeSummary(world: World, path: string, text: string): Promise<void> {
  await world.append(path, text).catch((error: NodeJS.ErrnoException) => {
    throw new CouldNotRun(phrase`the summary ${path} cannot be written: ${whyNotWritten(error)}`)
  })
}
