import type { Today } from '../check/check.ts'
import { checkFile } from '../check/check.ts'
import { withSafeFixes } from '../check/safe-fixes.ts'
import type { Library } from '../library/library.ts'

/** A record as its fixes leave it. */
export interface Fixed {
  readonly path: string
  readonly before: string
  readonly after: string
  /** How many findings were fixed. */
  readonly count: number
}

/** Records with every fix applied that keeps the meaning. The library holds them from then on. */
export function fixAll(library: Library, targets: readonly string[], now: Today): readonly Fixed[] {
  const found = (path: string) => checkFile(library, path, now)?.findings ?? []
  return targets.flatMap((path) => {
    const file = library.file(path)
    if (!file || file.unread) return []
    const before = file.tree.text
    const { text: after, count } = withSafeFixes(before, found(path), (text) => {
      library.put(path, text)
      return found(path)
    })
    return after === before ? [] : [{ path, before, after, count }]
  })
}
