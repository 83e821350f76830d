import { readdirSync, readFileSync } from 'node:fs'
import type { Library } from '../../server/src/library/library.ts'
import { createLibrary } from '../../server/src/library/create.ts'

export const folder = 'samples/systems'

/** The sample systems with their records, as they are on disk. */
export function libraryOf(): Library {
  const library = createLibrary()
  const names = readdirSync(folder, { recursive: true }) as string[]
  for (const name of names.filter((n) => n.endsWith('.yaml'))) {
    const path = `${folder}/${name.replaceAll('\\', '/')}`
    library.put(path, readFileSync(path, 'utf8'))
  }
  return library
}
