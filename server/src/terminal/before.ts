import { libraryOf, contextsOf, load } from './load.ts'
import { absolute } from './paths.ts'
import type { Selection } from './select.ts'
import type { World } from './world.ts'

/**
 * The same records in another world, as they were: those that were there, with what was around them.
 *
 * @param paths    what a person named
 * @param targets  the records that are checked now
 */
export async function selectBefore(
  before: World,
  paths: readonly string[],
  targets: readonly string[],
): Promise<Selection> {
  const named = await Promise.all(
    (paths.length ? paths : ['.']).map(async (path) => {
      const full = absolute(before.cwd, path)
      const standing = await before.standing(full)
      return standing ? [{ path: full, isFolder: standing === 'folder' }] : []
    }),
  )
  const contexts = await contextsOf(before, named.flat())
  const texts = await load(before, contexts, targets)
  return { texts, library: libraryOf(texts), targets: targets.filter((path) => texts.has(path)), closed: new Map() }
}
