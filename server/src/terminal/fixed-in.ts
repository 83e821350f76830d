import { createTwoFilesPatch } from 'diff'
import type { Work } from './check-all.ts'
import { fixAll } from './fixes.ts'
import { shown } from './paths.ts'
import { visible } from './visible.ts'
import { whyNotRewritten } from './why-not.ts'
import type { World } from './world.ts'
import { phrase, phraseInWords, type Phrase } from '../wording/phrase.ts'

interface Applied {
  /** How many records change. */
  readonly fixed: number
  /** How many cannot be written. */
  readonly unwritten: number
}

/**
 * Applies every fix that keeps the meaning: written into the records, or with `diff` printed as a patch that git and `patch`
 * apply, and nothing written. A record that cannot be written is said, stays in the library as it is, and keeps no other from being.
 */
export async function fixedIn(world: World, work: Work, { diff }: { readonly diff?: true }): Promise<Applied> {
  const say = (what: Phrase) => world.err(`wattproof: ${visible(phraseInWords(what, world.bundle))}\n`)
  const changes = await fixAll(work, world.today)
  const written: (typeof changes)[number][] = []
  for (const change of changes) {
    const { path, before, after } = change
    const name = shown(world.cwd, path)
    if (diff) {
      const patch = createTwoFilesPatch(`a/${name}`, `b/${name}`, before, after, undefined, undefined, { context: 3 })
      // git begins with the file names
      world.out(patch.replace(/^=+\n/, '').split('\n').map(visible).join('\n'))
      written.push(change)
      continue
    }
    try {
      await world.rewrite(path, after)
      written.push(change)
    } catch (error) {
      work.library.put(path, before)
      say(phrase`${name} cannot be written: ${whyNotRewritten(error as NodeJS.ErrnoException)}`)
    }
  }
  const count = written.reduce((sum, one) => sum + one.count, 0)
  if (written.length > 0) say(summary(count, written.length, diff))
  return { fixed: written.length, unwritten: changes.length - written.length }
}

function summary(count: number, files: number, wouldOnly: true | undefined): Phrase {
  const records = files === 1 ? phrase`1 record` : phrase`${files} records`
  const what = count === 1 ? phrase`1 finding` : phrase`${count} findings`
  return wouldOnly ? phrase`would fix ${what} in ${records}` : phrase`fixed ${what} in ${records}`
}
