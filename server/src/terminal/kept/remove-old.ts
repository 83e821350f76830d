import { lstatSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { removeQuietly } from './draft.ts'

/** For how long what a run that was stopped left stays, and a pack that nobody adds to, in milliseconds. */
const day = 24 * 3600e3
const month = 30 * day
/** What all packs may take, in bytes. */
const mostOfAll = 256e6

const isPack = (name: string) => /^[0-9a-f]{32}\.txt$/.test(name)
const isDraft = (name: string) => /^[0-9a-f]{32}\.txt\.[0-9a-f]{12}$/.test(name)

/** Removes packs that nobody uses, the oldest first. What is not of our making is left alone. */
export function removeOld(folder: string): void {
  let size = 0
  for (const { path, age, bytes, name } of filesIn(folder).sort((a, b) => a.age - b.age)) {
    size += bytes
    if (age > (isDraft(name) ? day : month) || (isPack(name) && size > mostOfAll)) removeQuietly(path)
  }
}

function filesIn(folder: string) {
  try {
    const names = readdirSync(folder).filter((name) => isPack(name) || isDraft(name))
    return names.flatMap((name) => {
      const path = join(folder, name)
      const about = lstatSync(path, { throwIfNoEntry: false })
      return about?.isFile() ? [{ path, name, age: Date.now() - about.mtimeMs, bytes: about.size }] : []
    })
  } catch {
    return []
  }
}
