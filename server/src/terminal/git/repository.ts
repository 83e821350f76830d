import { folderOf } from '../paths.ts'
import type { World } from '../world.ts'
import { phrase, type Phrase } from '../../wording/phrase.ts'

/**
 * The nearest folder upward that holds `.git`. git is always started there: in a folder below it git would take one that
 * only looks like a repository for one.
 */
export async function repositoryOf(world: Pick<World, 'standing'>, folder: string): Promise<string | null> {
  for (let at = folder; ; at = folderOf(at)) {
    if (await world.standing(at.endsWith('/') ? `${at}.git` : `${at}/.git`)) return at
    if (at === folderOf(at)) return null
  }
}

/** The place of a folder in its repository as git wants it: `.` or `a/b`. */
export const placeIn = (top: string, folder: string) =>
  folder === top ? '.' : folder.slice(top.endsWith('/') ? top.length : top.length + 1)

/** Why git would not look into a repository, in words; null where that is not the reason. */
export function refusal(top: string, complaint: string): Phrase | null {
  if (!/dubious ownership|safe\.directory/.test(complaint)) return null
  return phrase`git does not open ${top}, as the folder belongs to another user (dubious ownership); if you trust it: git config --global --add safe.directory '${top}'`
}
