import type { Span } from './span.ts'
import type { Entry, Node } from './tree.ts'

/** Where the places and names of a node come to lie. */
export interface Way {
  readonly span: (span: Span) => Span
  /** Of one character. */
  readonly offset: (offset: number) => number
  readonly pointer: (pointer: string) => string
}

/** A node and all below it, with other places. */
export function mappedNode<T extends Node>(node: T, way: Way): T {
  const own = { ...node, pointer: way.pointer(node.pointer), span: way.span(node.span) }
  if (own.kind === 'map') return { ...own, entries: own.entries.map((entry) => mappedEntry(entry, way)) }
  if (own.kind === 'list') return { ...own, items: own.items.map((item) => item && mappedNode(item, way)) }
  return own
}

export function mappedEntry(entry: Entry, way: Way): Entry {
  const { keySpan, pointer, colon, value } = entry
  return {
    ...entry,
    keySpan: way.span(keySpan),
    pointer: way.pointer(pointer),
    colon: colon === null ? null : way.offset(colon),
    value: value && mappedNode(value, way),
  }
}
