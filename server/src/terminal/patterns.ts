import picomatch from 'picomatch'
import { CouldNotRun } from './could-not-run.ts'
import { findRecords } from './find-records.ts'
import { absolute, shown, slashed } from './paths.ts'
import type { World } from './world.ts'
import { phrase } from '../wording/phrase.ts'

/**
 * Paths with each pattern replaced by the records that it matches, for where no shell does that. What is there under its own
 * name is no pattern.
 *
 * @throws CouldNotRun  for a pattern that matches no record
 */
export async function expanded(world: World, paths: readonly string[]): Promise<readonly string[]> {
  const all = await Promise.all(
    paths.map(async (path) => {
      if (path === '-' || !isPattern(path) || (await world.standing(absolute(world.cwd, path)))) return [path]
      const { base } = picomatch.scan(slashed(path))
      const found = await findRecords(world, absolute(world.cwd, base === '' ? '.' : base))
      const matches = picomatch(slashed(path), options)
      const matching = found.paths.map((one) => shown(world.cwd, one)).filter((one) => matches(one))
      if (matching.length === 0) throw new CouldNotRun(phrase`no record matches \`${path}\``)
      return matching
    }),
  )
  return all.flat()
}

/** Whether a path, as a person would name it, is left out. A pattern without a slash is one of the file's name or of a folder. */
export function excludedBy(cwd: string, patterns: readonly string[]): (path: string) => boolean {
  const matchers = patterns.flatMap((pattern) => {
    const plain = slashed(pattern).replace(/^\.\//, '').replace(/\/$/, '')
    const deep = plain.includes('/') ? plain : `**/${plain}`
    return [picomatch(deep, options), picomatch(`${deep}/**`, options)]
  })
  return (path) => matchers.some((matches) => matches(shown(cwd, path)))
}

const options = { dot: true }
const isPattern = (path: string) => picomatch.scan(slashed(path)).isGlob
