import { checkFile } from '../../server/src/check/check.ts'
import type { Checked } from '../../server/src/check/checked.ts'
import { createLibrary } from '../../server/src/library/create.ts'

export const today = '2026-11-25'

/** Checks one file of a library of one, or of one with settings beside it. */
export function check(text: string, { path = 'tern-110.panel.yaml', settings = '' } = {}): Checked {
  const library = createLibrary()
  library.put(path, text)
  if (settings) library.put('wattproof.yaml', settings)
  return checkFile(library, path, { today })!
}
