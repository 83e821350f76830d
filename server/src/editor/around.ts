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

/**
 * The same places as on the command line: the nearest folder upward with a `wattproof.yaml`, up to the root of the
 * repository; else that repository, or outside of one the file's own folder.
 */
export async function around(files: Files, uri: string): Promise<Around> {
  const own = parentOf(uri)
  for (let folder = own; ;) {
    const read = (names: readonly string[]) => Promise.all(names.map((name) => files.read(folder + name)))
    if ((await read(['wattproof.yaml', 'wattproof.yml'])).some((text) => text !== null))
      return { folder, isLibrary: true, deep: true }
    if ((await read(['.git/HEAD', '.git'])).some((text) => typeof text === 'string'))
      return { folder, isLibrary: false, deep: true }
    const above = parentOf(folder.slice(0, -1))
    if (above === '' || /^[^:]*:\/*[^/]*\/$/.test(folder)) return { folder: own, isLibrary: false, deep: false }
    folder = above
  }
}

const parentOf = (uri: string) => uri.slice(0, uri.lastIndexOf('/') + 1)
