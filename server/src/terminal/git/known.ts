import { folderOf } from '../paths.ts'
import type { World } from '../world.ts'
import { placeIn, refusal, repositoryOf } from './repository.ts'
import { sayIn } from '../../wording/phrase.ts'

/** Files below a folder that git knows or would add, as absolute paths; null where git has no say. */
export async function knownToGit(world: World, folder: string): Promise<readonly string[] | null> {
  const top = await repositoryOf(world, folder)
  if (top === null) return null // 7 ms less than to hear it from git
  const within = placeIn(top, folder)
  const listed = await world.git(top, [
    '--literal-pathspecs',
    'ls-files',
    '-co',
    '--exclude-standard',
    '-z',
    '--',
    within,
  ])
  if (listed?.code !== 0) {
    const words = listed && refusal(top, listed.err)
    if (words) world.err(`wattproof: ${sayIn(world.bundle)`${words}; every file in it is looked at instead`}\n`)
    return null
  }
  // a folder that git ignores but a person names is walked
  const ignored = async () => (await world.git(top, ['check-ignore', '-q', '--', within]))?.code === 0
  if (listed.out.length === 0 && within !== '.' && (await ignored())) return null
  const prefix = top === folderOf(top) ? top : `${top}/`
  return [...new Set(listed.out.toString().split('\0'))].filter(Boolean).map((path) => prefix + path)
}
