import type { Proposed } from '../findings/make.ts'
import { readQuantity } from '../quantities/read.ts'
import { phrase, type Phrase } from '../wording/phrase.ts'
import { insertEntry, removeThisEntry } from '../text/edits.ts'
import { lineStarts, positionAt } from '../text/lines.ts'
import { pointerKeys } from '../text/pointer.ts'
import { entryEnd } from '../text/read-node.ts'
import type { Edit } from '../text/span.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import type { Entry, MapNode, Node, Tree } from '../text/tree.ts'
import type { FieldInfo } from './field-info.ts'
import { infoAt } from './info-at.ts'
import { schemas } from './schemas.generated.ts'

/** Where an entry belongs, with the edits that put it there. */
export interface Home {
  /** Of the group that takes it. */
  readonly pointer: string
  readonly key: string
  readonly fix: Proposed
}

/**
 * The group that an entry most likely belongs to: the one above it that it was not indented under, the one around its own
 * where it is the last, or the only group of the record that knows its name.
 */
export function homeOf(entry: Entry, map: MapNode, root: FieldInfo, tree: Tree): Home | null {
  return above(entry, map, root, tree) ?? outside(entry, map, root, tree) ?? elsewhere(entry, map, root, tree)
}

/** The group of fields at a pointer, through a record in place of an id. */
export function groupAt(root: FieldInfo, pointer: string): FieldInfo | null {
  const info = infoAt(root, pointer)
  return info?.type === 'reference' && info.record ? (schemas[info.record] ?? info) : info
}

const knows = (info: FieldInfo | null | undefined, key: string) =>
  info?.fields?.some((field) => field.key === key) ?? false

function above(entry: Entry, map: MapNode, root: FieldInfo, tree: Tree): Home | null {
  if (map.flow) return null
  const own = groupAt(root, map.pointer)
  // those between belong there, too
  const before = map.entries.slice(0, map.entries.indexOf(entry)).findLast(({ key }) => knows(own, key))
  const open = before && openGroup(before.value, before.pointer, tree)
  if (!before || !open || !knows(groupAt(root, open.pointer), entry.key) || open.has(entry.key)) return null
  const column = open.column ?? columnAt(tree, before.keySpan.start) + 2
  return home(open.pointer, before.key, entry, phrase`indent under ${before.key}`, shifted(tree, entry, column))
}

/** A group of lines that could go on: a map, the last item of a list, or nothing yet. */
function openGroup(value: Node | null, pointer: string, tree: Tree) {
  if (value === null) return { pointer, column: null, has: () => false }
  if (value.kind === 'scalar' || value.flow) return null
  const last = value.kind === 'list' ? value.items.at(-1) : value
  if (last?.kind !== 'map' || last.flow) return null
  return {
    pointer: last.pointer,
    column: columnAt(tree, last.entries[0]?.keySpan.start ?? last.span.start),
    has: (key: string) => last.entries.some((one) => one.key === key),
  }
}

function outside(entry: Entry, map: MapNode, root: FieldInfo, tree: Tree): Home | null {
  if (map.flow || map.pointer === '' || map.entries.length < 2 || map.entries.at(-1) !== entry) return null
  const pointer = map.pointer.slice(0, map.pointer.lastIndexOf('/'))
  const around = nodeAtPointer(tree, pointer)
  if (around?.kind !== 'map' || around.flow || around.entries.some(({ key }) => key === entry.key)) return null
  const group = groupAt(root, pointer)
  if (!knows(group, entry.key)) return null
  const why = pointer === '' ? phrase`move to the left margin` : phrase`move under ${group!.key}`
  const column = columnAt(tree, around.entries[0]!.keySpan.start)
  return home(pointer, group!.key, entry, why, shifted(tree, entry, column))
}

/** The only group that lacks such a field and takes its value; of several, the one that must have it. */
function elsewhere(entry: Entry, map: MapNode, root: FieldInfo, tree: Tree): Home | null {
  const { value, key } = entry
  if (value?.kind !== 'scalar' || value.style === 'block' || map.flow) return null
  const groups = [root, ...(root.fields ?? []).filter(({ type }) => type === 'group')].flatMap((group) => {
    const pointer = group === root ? '' : `/${group.key}`
    const field = group.fields?.find((one) => one.key === key)
    const target = nodeAtPointer(tree, pointer)
    const isFree = target?.kind === 'map' && target !== map && !target.entries.some((one) => one.key === key)
    return field && isFree && takes(field, value.text) ? [{ pointer, group, field }] : []
  })
  const required = groups.filter(({ field }) => field.required)
  const [only] = groups.length === 1 ? groups : required.length === 1 ? required : []
  if (!only) return null
  const { pointer, group } = only
  // after the group that it is in
  const after = pointer === '' ? pointerKeys(map.pointer)[0] : undefined
  const edits = [removeThisEntry(tree, entry), insertEntry(tree, pointer, key, value.text, after)]
  const why = pointer === '' ? phrase`move to the left margin` : phrase`move under ${group.key}`
  return home(pointer, group.key, entry, why, edits)
}

const takes = ({ quantity, type }: FieldInfo, text: string) =>
  quantity
    ? readQuantity(text, quantity).quantity !== undefined
    : !['group', 'list', 'map'].includes(type) && !isBroken.test(text)

/** The rest of a line that broke holds other fields, or the end of brackets. */
const isBroken = /[{}[\]]|\w:(?: |$)/

function home(pointer: string, key: string, entry: Entry, why: Phrase, edits: readonly Edit[]): Home {
  const text = entry.value?.kind === 'scalar' ? entry.value.text : ''
  return { pointer, key, fix: { pointer: entry.pointer, text, why, certainty: 'guess', edits } }
}

/** The lines of an entry with its name in another column. */
function shifted(tree: Tree, entry: Entry, column: number): readonly Edit[] {
  const { text } = tree
  const starts = lineStarts(text)
  const by = column - columnAt(tree, entry.keySpan.start)
  const [first, last] = [entry.keySpan.start, entryEnd(entry)].map((at) => positionAt(starts, at).line)
  return starts.slice(first, last! + 1).flatMap((start): Edit[] => {
    const indent = /^ */.exec(text.slice(start, start + 200))![0].length
    if (by >= 0) return [{ span: { start, end: start }, text: ' '.repeat(by) }]
    return indent === 0 ? [] : [{ span: { start, end: start + Math.min(indent, -by) }, text: '' }]
  })
}

/** Of a place in its line, as it was typed. */
export function columnAt({ text }: Tree, offset: number): number {
  return offset - (Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1)
}
