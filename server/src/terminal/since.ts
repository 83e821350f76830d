import { CouldNotRun } from './could-not-run.ts'
import type { World } from './world.ts'

/** What is not as it was, as absolute paths: changed, new (also where git does not know it yet), or gone. */
export interface Changes {
  readonly there: ReadonlySet<string>
  readonly gone: ReadonlySet<string>
}

/**
 * The files below a folder that differ from where this branch left a revision, the working tree included.
 *
 * @throws CouldNotRun  outside of a repository, or where git does not know the revision
 */
export async function changesSince(world: World, folder: string, revision: string): Promise<Changes> {
  const git = async (...args: string[]) => world.git(folder, args)
  const known = await git('rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`)
  if (known === null) throw new CouldNotRun('--since needs git, which cannot be started')
  if (known.code !== 0) {
    const inside = (await git('rev-parse', '--git-dir'))?.code === 0
    if (!inside) throw new CouldNotRun(`--since needs a git repository, and ${folder} is in none`)
    throw new CouldNotRun(`git knows no revision \`${revision}\` here (a shallow clone may have left it out)`)
  }
  const left = await git('merge-base', known.out.trim(), 'HEAD')
  const from = left?.code === 0 ? left.out.trim() : known.out.trim()
  const differing = await git('diff', '--name-status', '--no-renames', '--relative', '-z', from)
  const unknown = await git('ls-files', '-o', '--exclude-standard', '-z')
  if (differing?.code !== 0 || unknown?.code !== 0) throw new CouldNotRun(`git could not compare with \`${revision}\``)

  const there = new Set<string>()
  const gone = new Set<string>()
  const parts = differing.out.split('\0')
  for (let i = 0; i + 1 < parts.length; i += 2) (parts[i] === 'D' ? gone : there).add(`${folder}/${parts[i + 1]}`)
  for (const path of unknown.out.split('\0')) {
    if (path) there.add(`${folder}/${path}`)
  }
  for (const path of there) gone.delete(path) // taken from the index but still on disk
  return { there, gone }
}
