import { spelledScalar } from '../text/spelling.ts'
import { childPointer, pointerKeys } from '../text/pointer.ts'
import type { Node, Tree } from '../text/tree.ts'

/**
 * What a record types, one text for each field, by JSON pointer and in the order of the file: `/stc/voc` is `22.1 V`. A list is
 * one text in YAML's flow form, so that every field of a record has one cell and nothing is lost.
 */
export function cellsOf({ root }: Pick<Tree, 'root'>): ReadonlyMap<string, string> {
  const cells = new Map<string, string>()
  if (root?.kind === 'map') fill(root, '', cells)
  return cells
}

function fill(node: Node, pointer: string, cells: Map<string, string>): void {
  if (node.kind !== 'map' || node.entries.length === 0) {
    cells.set(pointer, node.kind === 'scalar' ? node.text : flowText(node))
    return
  }
  for (const { key, value } of node.entries) {
    const own = childPointer(pointer, key)
    // of a key typed twice the first counts, as for readers
    if (value && !cells.has(own)) fill(value, own, cells)
  }
}

function flowText(node: Node | null): string {
  if (!node) return ''
  if (node.kind === 'scalar') return spelledScalar(node.text, node.style, true)
  if (node.kind === 'list') return `[${node.items.map(flowText).join(', ')}]`
  if (node.entries.length === 0) return '{}'
  return `{ ${node.entries.map(({ key, value }) => `${spelledScalar(key, 'plain', true)}: ${flowText(value)}`).join(', ')} }`
}

/** How people write a pointer: `stc.voc`. A pointer whose keys hold points stays one. */
export function dotted(pointer: string): string {
  const keys = pointerKeys(pointer)
  return keys.some((key) => key.includes('.')) ? pointer : keys.join('.')
}

/** The pointer that a person wrote as `stc.voc` or `/stc/voc`. */
export const pointerOf = (path: string): string =>
  path.startsWith('/') ? path : path.split('.').reduce((pointer, key) => childPointer(pointer, key), '')
