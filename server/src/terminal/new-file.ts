import type { RecordKind } from '../records/field-info.ts'
import { recordOfPath } from '../records/kinds.ts'
import { CouldNotRun } from './could-not-run.ts'
import { folderOf, shown } from './paths.ts'
import { writing } from './why-not.ts'
import type { World } from './world.ts'
import { phrase } from '../wording/phrase.ts'

/** A file that would be read as this kind of record, and that is not there. */
export async function mustBeFree(world: World, path: string, kind: RecordKind): Promise<void> {
  const name = shown(world.cwd, path)
  const ending = kind === 'library' ? 'wattproof.yaml' : `.${kind}.yaml`
  if (recordOfPath(path)?.kind !== kind)
    throw new CouldNotRun(phrase`\`${name}\` would not be read as ${kind}: its name must end in ${ending}`)
  if (await world.standing(path)) throw new CouldNotRun(phrase`\`${name}\` is there already and stays as it is`)
}

/** Writes a file, and the folders that lead to it where they are not there. */
export const written = (world: World, path: string, text: string): Promise<void> =>
  writing(
    shown(world.cwd, path),
    world.makeFolder(folderOf(path)).then(() => world.write(path, text)),
  )
