import { createTwoFilesPatch } from 'diff'
import type { Work } from './check-all.ts'
import { fixAll } from './fixes.ts'
import { shown } from './paths.ts'
import { visible } from './visible.ts'
import { writing } from './why-not.ts'
import type { World } from './world.ts'
import { phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'

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
      await writing(shown(world.cwd, path), world.rewrite(path, after))
      continue
    }
    const name = shown(world.cwd, path)
    const patch = createTwoFilesPatch(`a/${name}`, `b/${name}`, before, after, undefined, undefined, { context: 3 })
    // git begins with the file names
    world.out(patch.replace(/^=+\n/, '').split('\n').map(visible).join('\n'))
  }
  const count = fixed.reduce((sum, one) => sum + one.count, 0)
  if (fixed.length > 0) world.err(`wattproof: ${phraseInWords(summary(count, fixed.length, diff), world.bundle)}\n`)
  return fixed.length
}

function summary(count: number, files: number, wouldOnly: true | undefined): Phrase {
  const records = files === 1 ? phrase`1 record` : phrase`${files} records`
  const what = count === 1 ? phrase`1 finding` : phrase`${count} findings`
  return wouldOnly ? phrase`would fix ${what} in ${records}` : phrase`fixed ${what} in ${records}`
}
