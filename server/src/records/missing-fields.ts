import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import type { Span } from '../text/span.ts'
import { entryAtPointer, nodeAtPointer } from '../text/tree-queries.ts'
import type { Tree } from '../text/tree.ts'
import { reading } from './facts.ts'
import type { FieldInfo } from './field-info.ts'
import { infoAt } from './info-at.ts'

/** One finding for each required field that is not there, on the key of its group; one that stands empty on its own key. */
export function missingFields(pointers: readonly string[], root: FieldInfo, tree: Tree): readonly Finding[] {
  return pointers
    .filter((pointer) => !isReason(pointer))
    .map((pointer) => {
      const parent = pointer.slice(0, pointer.lastIndexOf('/'))
      const key = pointer.slice(parent.length + 1)
      const example = infoAt(root, pointer)?.examples?.[0]
      const such = example ? `, such as ${key}: ${example}` : ''
      const own = entryAtPointer(tree, pointer)
      return own
        ? finding(reading.missingField, { pointer, span: own.keySpan }, `${key} has no value yet${such}.`)
        : finding(
            reading.missingField,
            { pointer: parent, span: placeOf(parent, tree) },
            `${key} is missing ${from(parent)}${such}.`,
          )
    })
}

/** An acceptance without a reason has a finding of its own. */
const isReason = (pointer: string) => /^\/accepted\/\d+\/because$/.test(pointer)

/** `under stc`; `under output` for an item of that list. */
function from(parent: string): string {
  const group = parent.split('/').findLast((step) => /\D/.test(step))
  return group ? `under ${group}` : 'from the record'
}

/** The group's key; the first key of the group where it has none of its own, as in a list and at the top. */
function placeOf(parent: string, tree: Tree): Span {
  const entry = entryAtPointer(tree, parent)
  const node = nodeAtPointer(tree, parent)
  const first = node?.kind === 'map' ? node.entries[0] : undefined
  return entry?.keySpan ?? first?.keySpan ?? node?.span ?? { start: 0, end: 0 }
}
