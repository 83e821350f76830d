import type { Checked } from '../check/checked.ts'
import type { FieldInfo } from '../records/field-info.ts'
import { infoAt } from '../records/info-at.ts'
import { schemas } from '../records/schemas.generated.ts'
import type { Span } from '../text/span.ts'
import { pathAtOffset } from '../text/tree-queries.ts'
import type { Entry, Node } from '../text/tree.ts'

/** What stands at an offset of a file. */
export interface Spot {
  readonly pointer: string
  /** null for an item of a list */
  readonly entry: Entry | null
  readonly node: Node | null
  /** null for a field that no schema knows */
  readonly info: FieldInfo | null
  /** The key or the value, whichever the offset is on. */
  readonly span: Span
}

export function spotAt({ tree, kind }: Checked, offset: number): Spot | null {
  const entry = pathAtOffset(tree, offset).at(-1)
  if (!entry) return null
  const root = schemas[kind]
  const about = (pointer: string) => (root ? infoAt(root, pointer) : null)
  const item = itemAt(entry.value, offset)
  if (item) return { pointer: item.pointer, entry: null, node: item, info: about(item.pointer), span: item.span }
  const { pointer, value, keySpan } = entry
  const isOnKey = offset <= keySpan.end || value === null || value.kind !== 'scalar'
  if (isOnKey && !isWithin(keySpan, offset)) return null
  if (!isOnKey && !isWithin(value.span, offset)) return null
  return { pointer, entry, node: value, info: about(pointer), span: isOnKey ? keySpan : value.span }
}

export const isWithin = ({ start, end }: Span, offset: number) => start <= offset && offset <= end

/** The scalar item of a list, which has no key. */
function itemAt(node: Node | null, offset: number): Node | null {
  if (node?.kind !== 'list') return null
  const item = node.items.find((one) => one && isWithin(one.span, offset)) ?? null
  return item?.kind === 'scalar' ? item : itemAt(item, offset)
}
