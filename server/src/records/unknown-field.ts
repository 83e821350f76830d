import { tell, type Told } from '../wording/told.ts'
import type { Finding } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import { renameKey } from '../text/edits.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Tree } from '../text/tree.ts'
import { reading } from './facts.ts'
import type { FieldInfo } from './field-info.ts'
import { infoAt } from './info-at.ts'
import { nearest } from './nearest.ts'
import { schemas } from './schemas.generated.ts'

/**
 * A key that its group does not know: misspelt, at the wrong level, or of no meaning here. Where the field that was meant
 * is one of `missing`, nothing else says so.
 */
export function unknownField(
  parent: string,
  key: string,
  root: FieldInfo,
  tree: Tree,
  missing: ReadonlySet<string>,
): Finding | null {
  const node = nodeAtPointer(tree, parent)
  const entry = node?.kind === 'map' ? node.entries.find((e) => e.key === key) : undefined
  if (node?.kind !== 'map' || !entry) return null
  const group = groupAt(root, parent)
  const place = { pointer: entry.pointer, span: entry.keySpan }
  const free = (group?.fields ?? []).map((f) => f.key).filter((k) => !node.entries.some((e) => e.key === k))
  const near = nearest(key, free)
  const homes = homesOf(key, root)
  if (homes && !near) {
    const here = group?.key ? tell`under ${group.key}` : tell`at the left margin`
    return finding(reading.misplacedField, place, tell`${key} is ${here}; it belongs ${homes}.`)
  }
  const mean = near ? tell` Did you mean ${near}?` : ''
  return finding(
    reading.unknownField,
    place,
    tell`${key} is not a field of ${group?.key || tell`this record`}, so it is not read.${mean}`,
    {
      severity: near && missing.has(`${parent}/${near}`) ? reading.missingField.severity : undefined,
      corrections: near
        ? [
            {
              pointer: entry.pointer,
              text: near,
              why: tell`the nearest known field`,
              certainty: 'guess',
              edits: [renameKey(tree, entry.pointer, near)],
            },
          ]
        : [],
    },
  )
}

function groupAt(root: FieldInfo, pointer: string): FieldInfo | null {
  const info = infoAt(root, pointer)
  return info?.type === 'reference' && info.record ? (schemas[info.record] ?? info) : info
}

/** Where a key is known, at the top or in the groups there: `under stc or noct`. */
function homesOf(key: string, root: FieldInfo): Told | null {
  const has = (info: FieldInfo) => info.fields?.some((f) => f.key === key)
  const groups = (root.fields ?? []).filter((f) => f.type === 'group' && has(f)).map((f) => f.key)
  const under =
    groups.length > 1 ? tell`under ${groups.slice(0, -1).join(', ')} or ${groups.at(-1)}` : tell`under ${groups[0]}`
  if (groups.length === 0) return has(root) ? tell`at the left margin` : null
  return has(root) ? tell`at the left margin or ${under}` : under
}
