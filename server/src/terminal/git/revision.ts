import { folderOf } from '../paths.ts'
import type { World } from '../world.ts'
import { committed } from './blobs.ts'
import { repositoryOf } from './repository.ts'
import { sayIn } from '../../wording/phrase.ts'

/**
 * The commit that records are of, in words, and whether one of them is not as it was committed; null where git has no say.
 *
 * @param paths  records of one repository; the first names it
 */
export async function revisionOf(world: World, paths: readonly string[]): Promise<string | null> {
  const say = sayIn(world.bundle)
  const top = await repositoryOf(world, folderOf(paths[0]!))
  const head = top === null ? null : await world.git(top, ['rev-parse', '--verify', '--quiet', 'HEAD^{commit}'])
  if (top === null || head === null) return null
  if (head.code !== 0) return head.err === '' ? say`records not committed yet` : null
  const commit = head.out.toString().trim()
  const before = await committed(world, top, commit)
  const changed = await Promise.all(
    paths.map(async (path) => {
      const was = before.get(path)
      return was === undefined || !(await world.hashes(path, was.length === 64 ? 'sha256' : 'sha1'))?.includes(was)
    }),
  )
  const name = commit.slice(0, 12)
  return changed.includes(true) ? say`records at revision ${name}, changed since` : say`records at revision ${name}`
}
