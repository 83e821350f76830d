import { createTwoFilesPatch } from 'diff'
import type { Work } from './check-all.ts'
import { fixAll } from './fixes.ts'
import { shown } from './paths.ts'
import { visible } from './visible.ts'
import type { World } from './world.ts'

/**
 * Applies every fix that keeps the meaning: written into the records, or with `diff` printed as a patch that git and `patch`
 * apply, and nothing written.
 *
 * @returns  how many records change
 */
export async function fixedIn(world: World, work: Work, { diff }: { readonly diff?: true }): Promise<number> {
  const fixed = await fixAll(work, world.today)
  for (const { path, before, after } of fixed) {
    if (!diff) {
      await world.rewrite(path, after)
      continue
    }
    const name = shown(world.cwd, path)
    const patch = createTwoFilesPatch(`a/${name}`, `b/${name}`, before, after, undefined, undefined, { context: 3 })
    // git begins with the file names
    world.out(patch.replace(/^=+\n/, '').split('\n').map(visible).join('\n'))
  }
  const count = fixed.reduce((sum, one) => sum + one.count, 0)
  const records = fixed.length === 1 ? '1 record' : `${fixed.length} records`
  const what = count === 1 ? '1 finding' : `${count} findings`
  if (fixed.length > 0) world.err(`wattproof: ${diff ? 'would fix' : 'fixed'} ${what} in ${records}\n`)
  return fixed.length
}
