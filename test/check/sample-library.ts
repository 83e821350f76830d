import { readFileSync, readdirSync } from 'node:fs'
import { createLibrary } from '../../server/src/library/create.ts'
import type { Library } from '../../server/src/library/library.ts'

/** The panels of the sample library with the sample systems and what these name. */
export function sampleLibrary(): Library {
  const library = createLibrary()
  const folders = ['', '/batteries', '/climates', '/controllers'].map((name) => `samples/systems${name}`)
  for (const folder of ['samples/library/panels', ...folders])
    for (const name of readdirSync(folder).filter((one) => one.endsWith('.yaml')))
      library.put(`${folder}/${name}`, readFileSync(`${folder}/${name}`, 'utf8'))
  return library
}
