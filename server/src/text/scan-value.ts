import { afterSpaces } from './scan-line.ts'
import type { Entry, Node, ScalarNode } from './tree.ts'

/** Deeper than any record nests, and far from the end of a stack. */
export const deepest = 12

/** A name of a field as schemas have them; everything else is left to the whole grammar. */
export const fieldName = /[A-Za-z_][\w-]{0,60}:(?=[ \r\n]|$)/y

/** What a text on one line may begin with, so that it is one: a letter, a digit, a sign before a digit, a few marks. */
const plainStart = /[A-Za-z0-9\u00a0-\uffff(./+~<=$^]|-[\d.]/y

/** The value that fills a line from `start` to `end`; null where the whole grammar is needed. */
export function scanValue(text: string, pointer: string, start: number, end: number): Node | null {
  const first = text[start]!
  if (first === '[' || first === '{') {
    const node = scanFlow(text, pointer, start, end, 0)
    return node?.span.end === end ? node : null
  }
  if (first === '"' || first === "'") {
    const node = quoted(text, pointer, start, end)
    return node?.span.end === end ? node : null
  }
  return isPlain(text, start) && !colonIn(text, start, end) ? plain(text, pointer, start, end) : null
}

/** A list or map in brackets, or one of their plain values, that ends at `end` or before. */
function scanFlow(text: string, pointer: string, start: number, end: number, depth: number): Node | null {
  switch (text[start]) {
    case '[':
      return depth < deepest ? flowList(text, pointer, start, end, depth + 1) : null
    case '{':
      return depth < deepest ? flowMap(text, pointer, start, end, depth + 1) : null
    case '"':
    case "'":
      return quoted(text, pointer, start, end)
    default:
      return flowText(text, pointer, start, end)
  }
}

function flowList(text: string, pointer: string, start: number, end: number, depth: number): Node | null {
  const items: Node[] = []
  let at = afterSpaces(text, start + 1)
  if (text[at] !== ']') {
    for (;;) {
      const item = scanFlow(text, `${pointer}/${items.length}`, at, end, depth)
      if (!item) return null
      items.push(item)
      at = afterSpaces(text, item.span.end)
      if (text[at] === ']') break
      if (text[at] !== ',') return null
      at = afterSpaces(text, at + 1)
    }
  }
  return at < end ? { kind: 'list', pointer, span: { start, end: at + 1 }, items, flow: true } : null
}

function flowMap(text: string, pointer: string, start: number, end: number, depth: number): Node | null {
  const entries: Entry[] = []
  let at = afterSpaces(text, start + 1)
  if (text[at] !== '}') {
    for (;;) {
      fieldName.lastIndex = at
      const name = fieldName.exec(text)
      if (!name) return null
      const colon = at + name[0].length - 1
      const key = text.slice(at, colon)
      const own = `${pointer}/${key}`
      const value = scanFlow(text, own, afterSpaces(text, colon + 1), end, depth)
      if (!value) return null
      entries.push({ key, keySpan: { start: at, end: colon }, pointer: own, colon, value })
      at = afterSpaces(text, value.span.end)
      if (text[at] === '}') break
      if (text[at] !== ',') return null
      at = afterSpaces(text, at + 1)
    }
  }
  return at < end ? { kind: 'map', pointer, span: { start, end: at + 1 }, entries, flow: true } : null
}

/** What ends a text inside of brackets, or may: a colon before a blank or another of these makes a name of it, and else is part of it. */
const flowEnd = /[,[\]{}]|:(?=[ ,[\]{}\r\n]|$)/g

function flowText(text: string, pointer: string, start: number, end: number): Node | null {
  if (!isPlain(text, start)) return null
  flowEnd.lastIndex = start
  const mark = flowEnd.exec(text)
  if (!mark || end <= mark.index || mark[0] === ':' || mark[0] === '[' || mark[0] === '{') return null
  let last = mark.index
  while (text[last - 1] === ' ') last--
  return plain(text, pointer, start, last)
}

/** A text in quotes without escapes. */
function quoted(text: string, pointer: string, start: number, end: number): ScalarNode | null {
  const quote = text[start]!
  const close = text.indexOf(quote, start + 1)
  if (close < 0 || end <= close) return null
  const inside = text.slice(start + 1, close)
  if (quote === "'" ? text[close + 1] === quote : inside.includes('\\')) return null
  const style = quote === "'" ? 'single' : 'double'
  return { kind: 'scalar', pointer, span: { start, end: close + 1 }, text: inside, style }
}

function isPlain(text: string, start: number): boolean {
  plainStart.lastIndex = start
  return plainStart.test(text)
}

/** A colon that would make a key of what is before it. */
function colonIn(text: string, start: number, end: number): boolean {
  for (let at = text.indexOf(':', start); 0 <= at && at < end; at = text.indexOf(':', at + 1))
    if (at + 1 === end || text[at + 1] === ' ') return true
  return false
}

const plain = (text: string, pointer: string, start: number, end: number): ScalarNode => ({
  kind: 'scalar',
  pointer,
  span: { start, end },
  text: text.slice(start, end),
  style: 'plain',
})
