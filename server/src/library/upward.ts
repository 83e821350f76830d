/** Where the search for the library of a file ended. */
export interface Top {
  readonly folder: string
  /** Whether settings make it a library; else it is the root of a repository. */
  readonly isLibrary: boolean
}

/** What the search asks of a disk. */
export interface Folders {
  /** Whether one of these is in the folder. */
  holds(folder: string, names: readonly string[]): Promise<boolean>
  /** The folder above; null at the top. */
  above(folder: string): string | null
}

/** The nearest folder upward with a `wattproof.yaml`, up to the root of the repository; null where there is neither. */
export async function upward({ holds, above }: Folders, start: string): Promise<Top | null> {
  for (let folder: string | null = start; folder !== null; folder = above(folder)) {
    if (await holds(folder, ['wattproof.yaml', 'wattproof.yml'])) return { folder, isLibrary: true }
    if (await holds(folder, ['.git'])) return { folder, isLibrary: false }
  }
  return null
}
