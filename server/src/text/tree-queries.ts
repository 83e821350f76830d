import { parentPointer, pointerKeys } from './pointer.ts'
import { entryEnd } from './read-node.ts'
import type { Span } from './span.ts'
import { lineAround } from './lines.ts'
import type { Entry, ListNode, MapNode, Node, ScalarNode, Tree } from './tree.ts'

/** Of a key typed twice the first counts. */
export function nodeAtPointer(tree: Tree, pointer: string): Node | null {
  return pointerKeys(pointer).reduce(child, tree.root)
}

/**
 * The entry whose value `pointer` names; null for the root and for list items, which have no key. Where a key is typed
 * twice, what only the second holds is found too.
 */
export function entryAtPointer(tree: Tree, pointer: string): Entry | null {
  const parent = pointer === '' ? null : nodeAtPointer(tree, parentPointer(pointer))
  const first = parent?.kind === 'map' && parent.entries.find((entry) => entry.pointer === pointer)
  return first || (entriesOf(tree).find(({ entry }) => entry.pointer === pointer)?.entry ?? null)
}

/** Where a finding about `pointer` is shown: its value where it is one scalar, its key else, the start of the file at last. */
export function keySpanOrValue(tree: Tree, pointer: string): Span {
  const entry = entryAtPointer(tree, pointer)
  const node = entry?.value ?? nodeAtPointer(tree, pointer)
  if (node?.kind === 'scalar') return node.span
  if (entry) return entry.keySpan
  if (node && pointer !== '') return node.flow ? node.span : { start: node.span.start, end: node.span.start + 1 }
  return pointer === '' ? { start: 0, end: lineAround(tree.text, 0).end } : keySpanOrValue(tree, parentPointer(pointer))
}

/** An entry and the map that holds it. */
export interface HeldEntry {
  readonly entry: Entry
  readonly map: MapNode
}

/** Everything in a tree, in the order in which it was typed. */
export interface Inventory {
  readonly entries: readonly HeldEntry[]
  readonly scalars: readonly ScalarNode[]
  readonly collections: readonly (MapNode | ListNode)[]
}

/** A tree never changes, and every hazard goes through all of it. */
const inventories = new WeakMap<Tree, Inventory>()

export function inventory(tree: Tree): Inventory {
  const known = inventories.get(tree)
  if (known) return known
  const all = { entries: [], scalars: [], collections: [] }
  collect(tree.root, all)
  inventories.set(tree, all)
  return all
}

export function entriesOf(tree: Tree): readonly HeldEntry[] {
  return inventory(tree).entries
}

interface Growing {
  entries: HeldEntry[]
  scalars: ScalarNode[]
  collections: (MapNode | ListNode)[]
}

function collect(node: Node | null, all: Growing): void {
  if (!node) return
  if (node.kind === 'scalar') {
    all.scalars.push(node)
    return
  }
  all.collections.push(node)
  if (node.kind === 'list') for (const item of node.items) collect(item, all)
  else
    for (const entry of node.entries) {
      all.entries.push({ entry, map: node })
      collect(entry.value, all)
    }
}

/** The entries around `offset` from the root inwards. An entry reaches from its key to the end of its value, or of its line. */
export function pathAtOffset(tree: Tree, offset: number): Entry[] {
  const path: Entry[] = []
  let node: Node | null = tree.root
  while (node) {
    const inner: Entry | Node | null | undefined = innermost(tree.text, node, offset)
    if (inner && 'key' in inner) path.push(inner)
    node = inner ? ('key' in inner ? inner.value : inner) : null
  }
  return path
}

function innermost(text: string, node: Node, offset: number): Entry | Node | null | undefined {
  if (node.kind === 'scalar') return null
  if (node.kind === 'list')
    return node.items.find((item) => item && item.span.start <= offset && offset <= item.span.end)
  return node.entries.findLast((entry) => entry.keySpan.start <= offset && offset <= reach(text, entry, node.flow))
}

function reach(text: string, entry: Entry, flow: boolean): number {
  const { colon, value } = entry
  const end = entryEnd(entry)
  if (colon === null || (value && value.kind !== 'scalar')) return end
  const rest = text.slice(end, lineAround(text, end).end)
  return end + ((flow ? /^[ \t]*/ : /^[ \t]*(?=#|$)/).exec(rest)?.[0].length ?? 0)
}

function child(node: Node | null, key: string): Node | null {
  if (node?.kind === 'map') return node.entries.find((entry) => entry.key === key)?.value ?? null
  if (node?.kind === 'list') return node.items[Number(key)] ?? null
  return null
}
