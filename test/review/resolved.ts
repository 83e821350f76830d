import { resolveSystem } from '../../server/src/check/resolve-system.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import type { ResolvedSystem } from '../../server/src/review/resolved.ts'

/** A system description whose records all stand in it. */
export function resolved(yaml: string): ResolvedSystem {
  const library = createLibrary()
  library.put('own.system.yaml', yaml)
  return resolveSystem(library, library.file('own.system.yaml') as ReadFile<'system'>)
}
