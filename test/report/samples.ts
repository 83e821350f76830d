import { readdirSync, readFileSync } from 'node:fs'
import { createLibrary } from '../../server/src/library/create.ts'
import type { Library } from '../../server/src/library/library.ts'

/** The sample library and systems without those that have planted mistakes. */
export function samples(): Library {
  const library = createLibrary()
  for (const name of readdirSync('samples', { recursive: true }).map(String)) {
    if (/(^|\/)(hazards|mistakes)\/|\.pdf$/.test(name) || !/\.(ya?ml|json)$/.test(name)) continue
    library.put(`samples/${name}`, readFileSync(`samples/${name}`, 'utf8'))
  }
  return library
}
