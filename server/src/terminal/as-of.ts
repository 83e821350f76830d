import { committed, contents } from './git/blobs.ts'
import { repositoryFor } from './git/start.ts'
import { inPlaceOfDisk } from './in-place-of-disk.ts'
import { forkOf } from './since.ts'
import type { World } from './world.ts'

/**
 * A world whose records are those of a commit: where this branch left a revision, or the last commit itself. Before the first
 * commit there are none.
 *
 * @param revision      undefined is the last commit
 * @throws CouldNotRun  outside of a repository, or where git does not know the revision
 */
export async function asOf(world: World, folder: string, revision: string | undefined): Promise<World> {
  const { top, head } = await repositoryFor(world, folder, revision === undefined ? '--staged' : '--since')
  if (head === null) return inPlaceOfDisk(world, top, new Map())
  const commit = revision === undefined ? head : await forkOf(world, top, head, revision)
  const blobs = await committed(world, top, commit)
  const paths = [...blobs.keys()]
  const read = await contents(world, top, [...blobs.values()])
  return inPlaceOfDisk(world, top, new Map(paths.map((path, i) => [path, (read[i] ?? '').replace(/^\uFEFF/, '')])))
}
