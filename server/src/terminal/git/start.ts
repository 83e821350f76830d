import { CouldNotRun } from '../could-not-run.ts'
import type { World } from '../world.ts'
import { refusal, repositoryOf } from './repository.ts'
import { phrase } from '../../wording/phrase.ts'

/**
 * The repository around a folder and whether it has a commit.
 *
 * @param option       the option that needs it, for the complaint
 * @throws CouldNotRun  without git, outside of a repository, or where git refuses
 */
export async function repositoryFor(world: World, folder: string, option: string) {
  const top = await repositoryOf(world, folder)
  const asked = await world.git(top ?? folder, ['rev-parse', '--absolute-git-dir'])
  if (asked === null) throw new CouldNotRun(phrase`${option} needs git, which cannot be started`)
  if (top === null || asked.code !== 0)
    throw new CouldNotRun(
      (top !== null && refusal(top, asked.err)) || phrase`${option} needs a git repository, and ${folder} is in none`,
    )
  const head = await world.git(top, ['rev-parse', '--verify', '--quiet', 'HEAD^{commit}'])
  return { top, folder: asked.out.toString().trim(), head: head?.code === 0 ? head.out.toString().trim() : null }
}
