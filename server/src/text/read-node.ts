import { isAlias, isMap, isPair, isScalar, isSeq, Scalar, type Pair, type YAMLMap, type YAMLSeq } from 'yaml'
import { childPointer } from './pointer.ts'
import type { Entry, ListNode, MapNode, Node, ScalarNode } from './tree.ts'

/** `from`: where the node may begin at the earliest, so that its anchor and tag can be found in front of it. */
export function readNode(text: string, node: unknown, pointer: string, from: number): Node | null {
  if (isScalar(node)) return readScalar(text, node, pointer, from)
  if (isMap(node)) return readMap(text, node, pointer)
  if (isSeq(node)) return readList(text, node, pointer)
  if (isAlias(node)) return readAlias(text, rangeOf(node), pointer)
  return null
}

function readMap(text: string, map: YAMLMap, pointer: string): MapNode {
  const [start, end] = rangeOf(map)
  const flow = map.flow === true
  const entries: Entry[] = []
  let from = start
  for (const item of map.items) {
    const entry = readEntry(text, item, pointer, from)
    entries.push(entry)
    from = entryEnd(entry)
  }
  return { kind: 'map', pointer, span: { start, end: flow && text[end - 1] === '}' ? end : Math.max(from, start + (flow ? 1 : 0)) }, entries, flow }
}

function readEntry(text: string, pair: Pair, pointer: string, from: number): Entry {
  const keyNode = readNode(text, pair.key, '', from)
  const at = isRanged(pair.key) ? rangeOf(pair.key)[0] : from
  const keySpan = keyNode?.span ?? { start: at, end: at }
  const key = keyNode?.kind === 'scalar' ? keyNode.text : text.slice(keySpan.start, keySpan.end)
  const own = childPointer(pointer, key)
  const colon = pair.value === null ? null : colonAfter(text, keySpan.end)
  return { key, keySpan, pointer: own, colon, value: readNode(text, pair.value, own, colon === null ? keySpan.end : colon + 1) }
}

function readList(text: string, list: YAMLSeq, pointer: string): ListNode {
  const [start, end] = rangeOf(list)
  const flow = list.flow === true
  const items: (Node | null)[] = []
  let from = start
  list.items.forEach((item, index) => {
    const at = childPointer(pointer, index)
    const node = isPair(item) ? null : readNode(text, item, at, from)
    items.push(node)
    from = node?.span.end ?? (isRanged(item) ? rangeOf(item)[0] : from)
  })
  return { kind: 'list', pointer, span: { start, end: flow && text[end - 1] === ']' ? end : Math.max(from, start + 1) }, items, flow }
}

const styles = { PLAIN: 'plain', QUOTE_SINGLE: 'single', QUOTE_DOUBLE: 'double', BLOCK_FOLDED: 'block', BLOCK_LITERAL: 'block' } as const

function readScalar(text: string, scalar: Scalar, pointer: string, from: number): ScalarNode | null {
  const [start, rangeEnd] = rangeOf(scalar)
  const style = styles[(scalar.type ?? Scalar.PLAIN) as keyof typeof styles]
  const end = Math.max(start, trimmedEnd(text, start, rangeEnd))
  if (scalar.anchor !== undefined || scalar.tag !== undefined) {
    const before = propertiesBefore(text, from, start)
    if (before < start) {
      const whole = text.slice(before, end).trimEnd()
      return { kind: 'scalar', pointer, span: { start: before, end: before + whole.length }, text: whole, style: 'plain' }
    }
  }
  if (start === end) return null
  return { kind: 'scalar', pointer, span: { start, end }, text: scalar.source ?? text.slice(start, end), style }
}

/** `*110 W`: YAML takes `*110` for an alias and stumbles over `W`; what was typed is one text. */
function readAlias(text: string, [start, end]: readonly number[], pointer: string): ScalarNode {
  const rest = /^(?:[ \t]+(?!#)[^\s,[\]{}]+)*/.exec(text.slice(end, lineEnd(text, end!)))?.[0].length ?? 0
  const span = { start: start!, end: end! + rest }
  return { kind: 'scalar', pointer, span, text: text.slice(span.start, span.end), style: 'plain' }
}

function propertiesBefore(text: string, from: number, start: number): number {
  const properties = /(?:[&!][^\s,[\]{}]*[ \t]*)+$/.exec(text.slice(from, start))
  return properties ? start - properties[0].length : start
}

function entryEnd({ value, colon, keySpan }: Entry): number {
  return value?.span.end ?? (colon === null ? keySpan.end : colon + 1)
}

function colonAfter(text: string, offset: number): number | null {
  let at = offset
  while (text[at] === ' ' || text[at] === '\t' || text[at] === '\n' || text[at] === '\r') at++
  return text[at] === ':' ? at : null
}

function trimmedEnd(text: string, start: number, end: number): number {
  let at = end
  while (start < at && ' \t\r\n'.includes(text[at - 1]!)) at--
  return at
}

function lineEnd(text: string, offset: number): number {
  const at = text.slice(offset).search(/[\r\n]/)
  return at < 0 ? text.length : offset + at
}

function isRanged(node: unknown): node is { range: readonly number[] } {
  return typeof node === 'object' && node !== null && Array.isArray((node as { range?: unknown }).range)
}

function rangeOf(node: unknown): readonly [number, number] {
  return isRanged(node) ? [node.range[0]!, node.range[1]!] : [0, 0]
}
