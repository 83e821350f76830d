import type { Node, ScalarNode } from '../text/tree.ts'
import type { Field } from './field.ts'

const plainNumber = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)$/

/** What a schema validator sees of a node. Empty values and swallowed keys are left out; they have findings of their own. */
export function plain(node: Node | null, skip: ReadonlySet<string>): unknown {
  if (node === null) return undefined
  if (node.kind === 'scalar') return scalarValue(node)
  if (node.kind === 'list') return node.items.map((item) => plain(item, skip) ?? null)
  const out: Record<string, unknown> = {}
  for (const { key, pointer, value } of node.entries) {
    if (skip.has(pointer) || value === null) continue
    const read = plain(value, skip)
    if (key !== '__proto__') out[key] = read
    else Object.defineProperty(out, key, { value: read, enumerable: true, configurable: true, writable: true })
  }
  return out
}

/** A number or a word as YAML 1.2 means it; quantities stay text. */
export function scalarValue({ text, style }: ScalarNode): string | number | boolean {
  if (style !== 'plain') return text
  if (plainNumber.test(text)) return Number(text)
  if (text === 'true' || text === 'false') return text === 'true'
  return text
}

/** A value as the text that it is. */
export const text = (node: ScalarNode): Field<string> => ({
  pointer: node.pointer,
  text: node.text,
  value: node.text,
  span: node.span,
})
