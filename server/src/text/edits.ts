import { parentPointer } from './pointer.ts'
import type { Edit } from './span.ts'
import { isJson, spelledForJson, spelledScalar } from './spelling.ts'
import { entryAtPointer, nodeAtPointer } from './tree-queries.ts'
import type { Entry, Node, Tree } from './tree.ts'

export { appendComment } from './edit-comments.ts'
export { insertEntry, removeEntry, removeThisEntry } from './edit-entries.ts'
export { appendItem } from './edit-items.ts'

/**
 * The value at `pointer` reads `newText`, in the quotes that stand there or that the text needs; nothing else changes.
 * A field left empty is filled. Throws where there is no such field.
 */
export function setScalar(tree: Tree, pointer: string, newText: string): Edit {
  const entry = entryAtPointer(tree, pointer)
  const node = nodeAtPointer(tree, pointer) ?? entry?.value
  if (node) return replaceNode(tree, node, newText)
  if (!entry) throw new Error(`no field ${pointer}`)
  return fillEntry(tree, entry, newText)
}

/** As `setScalar`, for one of two fields of the same name. */
export function replaceNode(tree: Tree, node: Node, newText: string): Edit {
  const style = node.kind === 'scalar' && node.style !== 'block' ? node.style : 'plain'
  return { span: node.span, text: spelled(tree, node.pointer, newText, style) }
}

/** The key of the entry at `pointer` reads `newKey`. Throws where there is no such entry. */
export function renameKey(tree: Tree, pointer: string, newKey: string): Edit {
  const entry = entryAtPointer(tree, pointer)
  if (!entry) throw new Error(`no field ${pointer}`)
  const quote = tree.text[entry.keySpan.start]
  const style = quote === '"' ? 'double' : quote === "'" ? 'single' : 'plain'
  return { span: entry.keySpan, text: spelledScalar(newKey, style, isInFlow(tree, pointer)) }
}

function fillEntry(tree: Tree, { colon, keySpan, pointer }: Entry, newText: string): Edit {
  const text = spelled(tree, pointer, newText, 'plain')
  if (colon === null) return { span: { start: keySpan.end, end: keySpan.end }, text: `: ${text}` }
  const blanks = /^[ \t]*(?=[,\r\n]|$)/.exec(tree.text.slice(colon + 1))?.[0].length ?? 0
  return { span: { start: colon + 1, end: colon + 1 + blanks }, text: ` ${text}` }
}

function spelled(tree: Tree, pointer: string, text: string, style: 'plain' | 'single' | 'double'): string {
  return style === 'plain' && isJson(tree) ? spelledForJson(text) : spelledScalar(text, style, isInFlow(tree, pointer))
}

/** Whether the value stands inside `{ }` or `[ ]`, where commas and brackets mean something. */
export function isInFlow(tree: Tree, pointer: string): boolean {
  if (pointer === '') return false
  const parent = nodeAtPointer(tree, parentPointer(pointer))
  return parent !== null && parent.kind !== 'scalar' && parent.flow
}
