import { committed, contents, inIndex } from './git/blobs.ts'
import { repositoryFor } from './git/start.ts'
import { inPlaceOfDisk } from './in-place-of-disk.ts'
import { absolute, isWithin } from './paths.ts'
import type { Changes } from './since.ts'
import type { World } from './world.ts'

/**
 * What the next commit would hold, in place of what is on disk: a world whose records are those of the index, and how
 * they differ from the last commit. Before the first commit all of them do.
 *
 * @throws CouldNotRun  outside of a repository
 */
export async function staged(world: World): Promise<{ world: World; changes: Changes }> {
  const { top, folder, head } = await repositoryFor(world, world.cwd, '--staged')
  const index = await inIndex(world, top, ownIndex(world, folder))
  const before = head === null ? new Map<string, string>() : await committed(world, top, head)
  const paths = [...index.keys()]
  const read = await contents(world, top, [...index.values()])
  const texts = new Map(paths.map((path, i) => [path, (read[i] ?? '').replace(/^\uFEFF/, '')]))
  return {
    world: inPlaceOfDisk(world, top, texts),
    changes: {
      there: new Set(paths.filter((path) => before.get(path) !== index.get(path))),
      gone: new Set([...before.keys()].filter((path) => !index.has(path))),
    },
  }
}

/** `git commit -a` and `git commit FILE` prepare an index of their own, which a hook hears of in this variable. */
function ownIndex({ env, cwd }: World, folder: string): string | undefined {
  const path = env.GIT_INDEX_FILE ? absolute(cwd, env.GIT_INDEX_FILE) : undefined
  return path !== undefined && isWithin(folder, path) ? path : undefined
}
