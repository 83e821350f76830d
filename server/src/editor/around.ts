import { upward, type Folders } from '../library/upward.ts'
import type { Files } from './files.ts'

/** Where the records are that a file belongs with. */
export interface Around {
  /** The address of a folder, with a slash at its end. */
  readonly folder: string
  /** Whether settings make it a library. */
  readonly isLibrary: boolean
  /** Whether what lies below the folder belongs to it as well. */
  readonly deep: boolean
}

/** The same places as on the command line: where the search upward ends, else the file's own folder. */
export async function around(files: Files, uri: string): Promise<Around> {
  const own = parentOf(uri)
  const top = await upward(foldersOf(files), own)
  return top ? { ...top, deep: true } : { folder: own, isLibrary: false, deep: false }
}

const foldersOf = (files: Files): Folders => ({
  holds: async (folder, names) => {
    const texts = await Promise.all(names.flatMap(textsOf).map((name) => files.read(folder + name)))
    // settings that cannot be read are there all the same, but a folder `.git` is no text
    return texts.some((text) => (names.includes('.git') ? typeof text === 'string' : text !== null))
  },
  above: (folder) => {
    const above = parentOf(folder.slice(0, -1))
    return above === '' || /^[^:]*:\/*[^/]*\/$/.test(folder) ? null : above
  },
})

/** A file that is always in git's folder, which is itself a file in a worktree. */
const textsOf = (name: string) => (name === '.git' ? ['.git/HEAD', '.git'] : [name])

const parentOf = (uri: string) => uri.slice(0, uri.lastIndexOf('/') + 1)
