import { checkFile } from '../check/check.ts'
import { withSafeFixes } from '../check/safe-fixes.ts'
import type { Work } from './check-all.ts'

/** A record as its fixes leave it. */
export interface Fixed {
  readonly path: string
  readonly before: string
  readonly after: string
  /** How many findings were fixed. */
  readonly count: number
}

/** Records with every fix applied that keeps the meaning. The library holds them from then on. */
export async function fixAll(
  { library, targets, sheets }: Pick<Work, 'library' | 'targets' | 'sheets'>,
  today: string,
): Promise<readonly Fixed[]> {
  const fixed: Fixed[] = []
  for (const path of targets) {
    const file = library.file(path)
    if (!file || file.unread) continue
    const beside = await sheets.at(path)
    const found = () => checkFile(library, path, { today, sheetOf: () => beside })?.findings ?? []
    const before = file.tree.text
    const { text: after, count } = withSafeFixes(before, found(), (text) => {
      library.put(path, text)
      return found()
    })
    if (after !== before) fixed.push({ path, before, after, count })
  }
  return fixed
}
