import { mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

/**
 * Puts files in the place of those of the same name, each at one stroke: a program that is started meanwhile, or another
 * build, finds the old one or the new one and never half of one.
 *
 * @param files  text by path
 */
export function replace(files) {
  for (const [path, text] of files) {
    mkdirSync(dirname(path), { recursive: true })
    const beside = `${path}.${process.pid}`
    writeFileSync(beside, text)
    renameSync(beside, path)
  }
}

/** Removes what no longer belongs into a folder. What another process is writing has the number of that in its name. */
export function removeOthers(folder, paths) {
  const kept = new Set(paths)
  for (const name of readdirSync(folder, { recursive: true })) {
    const path = join(folder, name)
    if (!kept.has(path) && !/\.\d+$/.test(name) && statSync(path, { throwIfNoEntry: false })?.isFile())
      rmSync(path, { force: true })
  }
}
