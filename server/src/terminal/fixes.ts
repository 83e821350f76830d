import type { Today } from '../check/check.ts'
import { checkFile } from '../check/check.ts'
import type { Library } from '../library/library.ts'
import { applyEdits, type Edit } from '../text/span.ts'

/** A record as its fixes leave it. */
export interface Fixed {
  readonly path: string
  readonly before: string
  readonly after: string
  /** How many findings were fixed. */
  readonly count: number
}

/** A fix may uncover another; nothing needs more rounds than this. */
const rounds = 10

/** Records with every fix applied that keeps the meaning; what changes a number waits for a person. The library holds them from then on. */
export function fixAll(library: Library, targets: readonly string[], now: Today): readonly Fixed[] {
  return targets.flatMap((path) => {
    const before = library.file(path)
    if (!before || before.unread) return []
    let count = 0
    for (let round = 0; round < rounds; round++) {
      const checked = checkFile(library, path, now)
      const edits = checked ? apart(checked.findings.map(({ corrections: [first] }) => sameOf(first))) : []
      if (!checked || edits.length === 0) break
      library.put(path, applyEdits(checked.tree.text, edits.flat()))
      count += edits.length
    }
    const after = library.file(path)!.tree.text
    return after === before.tree.text ? [] : [{ path, before: before.tree.text, after, count }]
  })
}

const sameOf = (correction: { readonly certainty: string; readonly edits: readonly Edit[] } | undefined) =>
  correction?.certainty === 'same' ? correction.edits : []

/** Of fixes that touch the same characters the first. */
function apart(all: readonly (readonly Edit[])[]): readonly (readonly Edit[])[] {
  const taken: Edit[] = []
  return all.filter((edits) => {
    const isFree = edits.length > 0 && edits.every((edit) => !taken.some((other) => overlap(edit, other)))
    if (isFree) taken.push(...edits)
    return isFree
  })
}

const overlap = ({ span: a }: Edit, { span: b }: Edit) => a.start <= b.end && b.start <= a.end
