import type { FieldInfo } from '../records/field-info.ts'
import { readQuantity } from '../quantities/read.ts'
import { lineEnding } from '../text/edit-entries.ts'
import { insertEntry } from '../text/edits.ts'
import { lineAround } from '../text/lines.ts'
import { parentPointer, pointerKeys } from '../text/pointer.ts'
import { entryEnd } from '../text/read-node.ts'
import type { Edit } from '../text/span.ts'
import { isJson } from '../text/spelling.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Entry, Tree } from '../text/tree.ts'
import { cellsOf } from './cells.ts'
import { columnOf, type Meanings } from './columns.ts'
import type { NamedField } from './heading.ts'
import { fieldsText, withUnit, type Filled } from './record-text.ts'

/**
 * YAML of another shape moved into our fields: `panel: { voc_v: 21.8 }` becomes `stc:` with `voc: 21.8 V`. Names are understood as the
 * headings of tables are.
 *
 * @param entry  at the left margin
 * @param saved  headings that a library explains
 * @returns      null unless every value below the entry has a field that is not typed yet
 */
export function movedInto(root: FieldInfo, tree: Tree, entry: Entry, saved: Meanings): readonly Edit[] | null {
  if (tree.root?.kind !== 'map' || isJson(tree) || entry.value === null) return null
  const line = lineAround(tree.text, entry.keySpan.start)
  const isAtMargin = tree.text.slice(line.start, entry.keySpan.start).replace(/^\ufeff/, '') === ''
  const cells = cellsOf({ root: { ...tree.root, entries: [entry] } })
  const filled = [...cells].flatMap(([pointer, text]) => placed(pointer, text, root, saved) ?? [])
  const pointers = new Set(filled.map(({ named }) => named.pointer))
  const isFree = [...pointers].every((pointer) => nodeAtPointer(tree, pointer) === null)
  if (!isAtMargin || cells.size === 0 || filled.length < cells.size || pointers.size < cells.size || !isFree)
    return null
  const isOpen = ({ named }: Filled) => named.pointer.lastIndexOf('/') > 0 && nodeAtPointer(tree, topOf(named)) !== null
  const inserted = filled.filter(isOpen).map((one) => inserting(tree, one))
  if (inserted.includes(null)) return null
  const block = fieldsText(
    root,
    filled.filter((one) => !isOpen(one)),
  )
  const end = block === '' ? lineAround(tree.text, entryEnd(entry)).end + lineEnding(tree.text).length : entryEnd(entry)
  const text = block.trimEnd().replaceAll('\n', lineEnding(tree.text))
  return [{ span: { start: entry.keySpan.start, end: Math.min(end, tree.text.length) }, text }, ...(inserted as Edit[])]
}

const topOf = ({ pointer }: NamedField) => `/${pointerKeys(pointer)[0]}`

/** The field of a value: by the longest end of its path that names one and takes it. */
function placed(pointer: string, text: string, root: FieldInfo, saved: Meanings): Filled | null {
  const keys = pointerKeys(pointer)
  for (let from = 0; from < keys.length; from++) {
    const column = columnOf(keys.slice(from).join('.'), root, saved)
    if (column.is === 'field' && takes(column.named, text)) return { named: column.named, text }
  }
  return null
}

function takes(named: NamedField, text: string): boolean {
  const { quantity: kind, unit } = named.info
  return !kind || readQuantity(withUnit(text, named), kind, unit ? { unit } : {}).quantity !== undefined
}

/** In a group that is there; null for what is no single text. */
function inserting(tree: Tree, { named, text }: Filled): Edit | null {
  const parent = parentPointer(named.pointer)
  if (named.info.type === 'list' || nodeAtPointer(tree, parent)?.kind !== 'map') return null
  return insertEntry(tree, parent, pointerKeys(named.pointer).at(-1)!, withUnit(text, named))
}
