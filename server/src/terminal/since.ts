import { CouldNotRun } from './could-not-run.ts'
import { committed, type Blobs } from './git/blobs.ts'
import { repositoryFor } from './git/start.ts'
import { recordOfPath } from '../records/kinds.ts'
import { isWithin } from './paths.ts'
import type { World } from './world.ts'
import { phrase } from '../wording/phrase.ts'

/** Records that are not as they were, as absolute paths: changed, new (also where git does not know it yet), or gone. */
export interface Changes {
  readonly there: ReadonlySet<string>
  readonly gone: ReadonlySet<string>
}

/**
 * The records below a folder that differ from where this branch left a revision, the working tree included. Before the
 * first commit all of them do. Contents are compared by git's hash of the bytes, as its own comparison would run the
 * filters that a repository sets.
 *
 * @throws CouldNotRun  outside of a repository, or where git does not know the revision
 */
export async function changesSince(world: World, folder: string, revision: string): Promise<Changes> {
  const { top, head } = await repositoryFor(world, folder, '--since')
  const before = head === null ? new Map<string, string>() : await atFork(world, top, head, revision)
  const known = (await world.known(folder)) ?? []
  const there = new Set<string>()
  const gone = new Set([...before.keys()].filter((path) => isWithin(folder, path)))
  for (const path of new Set([...known.filter(recordOfPath), ...gone])) {
    const was = before.get(path)
    const hashes = await world.hashes(path, was?.length === 64 ? 'sha256' : 'sha1')
    if (hashes === null) continue // git still lists it, but it is gone
    gone.delete(path)
    if (was === undefined || !hashes.includes(was)) there.add(path)
  }
  return { there, gone }
}

const atFork = async (world: World, top: string, head: string, revision: string): Promise<Blobs> =>
  committed(world, top, await forkOf(world, top, head, revision))

/**
 * The commit at which a branch left a revision.
 *
 * @throws CouldNotRun  where git does not know the revision
 */
export async function forkOf(world: World, top: string, head: string, revision: string): Promise<string> {
  const known = await world.git(top, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`])
  if (known?.code !== 0)
    throw new CouldNotRun(phrase`git knows no revision \`${revision}\` here (a shallow clone may have left it out)`)
  const commit = known.out.toString().trim()
  const left = await world.git(top, ['merge-base', commit, head])
  return left?.code === 0 ? left.out.toString().trim() : commit
}
