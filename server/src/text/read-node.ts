import { isAlias, isMap, isPair, isScalar, isSeq, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml'
import { childPointer } from './pointer.ts'
import type { Entry, ListNode, MapNode, Node, ScalarNode } from './tree.ts'

/** `from`: where the node may begin at the earliest, so that its anchor and tag can be found in front of it. */
export function readNode(text: string, node: unknown, pointer: string, from: number): Node | null {
  if (isScalar(node)) return readScalar(text, node, pointer, from)
  if (isMap(node)) return readMap(text, node, pointer)
  if (isSeq(node)) return readList(text, node, pointer)
  return isAlias(node) ? plainText(text, pointer, ...rangeOf(node)) : null
}

function readMap(text: string, map: YAMLMap, pointer: string): MapNode {
  const [start, end] = rangeOf(map)
  const flow = map.flow === true
  const entries: Entry[] = []
  let last = flow ? behindBracket(text, start) : start
  for (const item of map.items) {
    const entry = readEntry(text, item, pointer, last)
    entries.push(entry)
    last = Math.max(last, entryEnd(entry))
  }
  return { kind: 'map', pointer, span: { start, end: flow && text[end - 1] === '}' ? end : last }, entries, flow }
}

/** YAML puts what is missing at the end of a file behind its last character. */
const behindBracket = (text: string, start: number) => Math.min(start + 1, text.length)

function readEntry(text: string, pair: Pair, pointer: string, from: number): Entry {
  const node = readNode(text, pair.key, '', from)
  const at = node || !isRanged(pair.key) ? from : rangeOf(pair.key)[0]
  const colon = pair.value === null ? null : colonAfter(text, node?.span.end ?? at)
  // A line without a colon was read as if its last letter were one.
  const keyEnd =
    colon === null && pair.value !== null ? lineEndFrom(text, node?.span.end ?? at) : (node?.span.end ?? at)
  const keySpan = { start: node?.span.start ?? at, end: keyEnd }
  const key = node?.kind === 'scalar' && node.span.end === keyEnd ? node.text : text.slice(keySpan.start, keySpan.end)
  const own = childPointer(pointer, key)
  const value = pair.value === null || colon === null ? null : readNode(text, pair.value, own, colon + 1)
  return { key, keySpan, pointer: own, colon, value }
}

function readList(text: string, list: YAMLSeq, pointer: string): ListNode {
  const [start, end] = rangeOf(list)
  const flow = list.flow === true
  let last = behindBracket(text, start)
  const items = list.items.map((item, index) => {
    const node = isPair(item) ? null : readNode(text, item, childPointer(pointer, index), last)
    if (node) last = Math.max(last, node.span.end)
    return node
  })
  return { kind: 'list', pointer, span: { start, end: flow && text[end - 1] === ']' ? end : last }, items, flow }
}

function readScalar(text: string, scalar: Scalar, pointer: string, from: number): ScalarNode | null {
  const [start, rangeEnd] = rangeOf(scalar)
  const end = trimmedEnd(text, start, rangeEnd)
  const before = scalar.anchor !== undefined || scalar.tag !== undefined ? propertiesBefore(text, from, start) : start
  if (before < start) return plainText(text, pointer, before, trimmedEnd(text, before, end))
  if (start === end) return null
  const style = styles[scalar.type ?? 'PLAIN'] ?? 'plain'
  if (style === 'plain') return plainText(text, pointer, start, end)
  return { kind: 'scalar', pointer, span: { start, end }, text: scalar.source ?? '', style }
}

const styles: Readonly<Record<string, ScalarNode['style']>> = {
  QUOTE_SINGLE: 'single',
  QUOTE_DOUBLE: 'double',
  BLOCK_FOLDED: 'block',
  BLOCK_LITERAL: 'block',
}

/** What was typed; where it goes on over several lines, they are joined as YAML does. */
function plainText(text: string, pointer: string, start: number, end: number): ScalarNode {
  const typed = text.slice(start, end)
  const joined = /[\r\n]/.test(typed)
    ? typed
        .split(/\r\n?|\n/)
        .map(withoutBlanks)
        .join('\n')
        .replaceAll(/\n(\n*)/g, (_, more) => more || ' ')
    : typed
  return { kind: 'scalar', pointer, span: { start, end }, text: withoutOpenQuote(joined), style: 'plain' }
}

/** A quote that is not closed was read as if it were a letter. */
const withoutOpenQuote = (text: string) => (/^(["'])(?:(?!\1).)+$/.test(text) ? text.slice(1) : text)

function propertiesBefore(text: string, from: number, start: number): number {
  const earliest = Math.max(from, start - 200)
  let first = start
  for (let at = start; earliest < at; at = first) {
    const wordEnd = backOver(text, at, earliest, (sign) => sign === ' ' || sign === '\t')
    const word = backOver(text, wordEnd, earliest, (sign) => !/[\s,[\]{}]/.test(sign))
    const mark = text.slice(word, wordEnd).search(/[&!]/)
    if (mark < 0) return first
    first = word + mark
    if (0 < mark) return first
  }
  return first
}

function backOver(text: string, from: number, earliest: number, isOver: (sign: string) => boolean): number {
  let at = from
  while (earliest < at && isOver(text[at - 1]!)) at--
  return at
}

/** Spaces and tabs around a line; other white space stays. */
function withoutBlanks(line: string): string {
  const rest = line.replace(/^[ \t]+/, '')
  return rest.slice(
    0,
    backOver(rest, rest.length, 0, (sign) => sign === ' ' || sign === '\t'),
  )
}

/** Where an entry ends: its value, or else its colon, or else its key. */
export function entryEnd({ value, colon, keySpan }: Entry): number {
  return value?.span.end ?? (colon === null ? keySpan.end : colon + 1)
}

function colonAfter(text: string, offset: number): number | null {
  let at = offset
  while (at < text.length && ' \t\r\n'.includes(text[at]!)) at++
  return text[at] === ':' ? at : null
}

function lineEndFrom(text: string, offset: number): number {
  return offset + /^[^\r\n#]*/.exec(text.slice(offset))![0].trimEnd().length
}

function trimmedEnd(text: string, start: number, end: number): number {
  let at = end
  while (start < at && ' \t\r\n'.includes(text[at - 1]!)) at--
  return at
}

function isRanged(node: unknown): node is { range: readonly number[] } {
  return typeof node === 'object' && node !== null && Array.isArray((node as { range?: unknown }).range)
}

function rangeOf(node: unknown): [number, number] {
  return isRanged(node) ? [node.range[0]!, node.range[1]!] : [0, 0]
}
