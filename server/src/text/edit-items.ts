import { lineEnding } from './edit-entries.ts'
import { lineAround } from './lines.ts'
import { entryEnd } from './read-node.ts'
import type { Edit } from './span.ts'
import { isJson } from './spelling.ts'
import type { Entry, ListNode, MapNode, Tree } from './tree.ts'
import { columnOf, inBlock, inFlow, isTight, type Typed } from './write-like.ts'

/**
 * Adds an item at the end of the list `key` of the file, written as the item before it is: block or flow, on one line or several, with
 * its indentation, quotes and line endings. Where there is no such list yet it is begun, behind the entry `afterKey`.
 *
 * @returns null where the file holds no map or something else is in the list's place
 */
export function appendItem(tree: Tree, key: string, item: Typed, afterKey: string): readonly Edit[] | null {
  const { root } = tree
  if (root?.kind !== 'map') return null
  const entry = root.entries.find((one) => one.key === key)
  const list = entry?.value
  if (list?.kind === 'list' && list.items.some((one) => one)) return behind(tree, list, item)
  if (list && list.kind !== 'list') return null
  if (list) return [{ span: list.span, text: `[${inFlow(tree, item, null)}]` }]
  return root.flow ? begunInFlow(tree, root, entry, key, item, afterKey) : begun(tree, root, entry, key, item, afterKey)
}

function behind(tree: Tree, list: ListNode, item: Typed): readonly Edit[] {
  const { text } = tree
  const like = list.items.findLast((one) => one)!
  if (!list.flow) {
    const dash = columnOf(text, list.span.start)
    const column =
      like.span.start > lineAround(text, like.span.start).start ? columnOf(text, like.span.start) : dash + 2
    const mark = '-'.padEnd(Math.max(2, column - dash))
    const at = lineAround(text, like.span.end).end
    return [insert(at, lineEnding(text) + ' '.repeat(dash) + mark + inBlock(tree, item, like, dash + mark.length))]
  }
  const line = lineAround(text, like.span.start)
  const indent = text.slice(line.start, like.span.start)
  const written = inFlow(tree, item, like)
  if (!/^[ \t]*$/.test(indent) || line.start <= list.span.start)
    return [insert(like.span.end, `${separator(tree)}${written}`)]
  const next = `${lineEnding(text)}${indent}${written}`
  const { end } = lineAround(text, like.span.end)
  if (list.span.end <= end) return [insert(like.span.end, `,${next}`)]
  // a comment behind the last item stays behind it
  const hasComma = /^[ \t]*,/.test(text.slice(like.span.end, end))
  return hasComma ? [insert(end, `${next},`)] : [insert(like.span.end, ','), insert(end, next)]
}

function begun(tree: Tree, root: MapNode, entry: Entry | undefined, key: string, item: Typed, afterKey: string) {
  const { text } = tree
  const [column, eol] = [columnOf(text, root.span.start), lineEnding(text)]
  const body = `${eol}${' '.repeat(column + 2)}- ${inBlock(tree, item, null, column + 4)}`
  if (entry) return [insert(lineAround(text, entryEnd(entry)).end, body)]
  const at = lineAround(text, entryEnd(neighbour(root, afterKey))).end
  return [insert(at, `${eol}${' '.repeat(column)}${key}:${body}`)]
}

function begunInFlow(tree: Tree, root: MapNode, entry: Entry | undefined, key: string, item: Typed, afterKey: string) {
  const { text } = tree
  const list = `[${inFlow(tree, item, null)}]`
  if (entry) return [insert(entryEnd(entry), ` ${list}`)]
  const before = neighbour(root, afterKey)
  const line = lineAround(text, before.keySpan.start)
  const indent = text.slice(line.start, before.keySpan.start)
  const joint =
    /^[ \t]*$/.test(indent) && root.span.start < line.start ? `,${lineEnding(text)}${indent}` : separator(tree)
  const typedKey = isJson(tree) ? JSON.stringify(key) : key
  return [insert(entryEnd(before), `${joint}${typedKey}:${separator(tree).slice(1)}${list}`)]
}

const neighbour = (root: MapNode, key: string): Entry =>
  root.entries.find((one) => one.key === key) ?? root.entries.at(-1)!

/** Between two of one line: a file without blanks stays without. */
const separator = (tree: Tree): string => (isTight(tree) ? ',' : ', ')

const insert = (at: number, text: string): Edit => ({ span: { start: at, end: at }, text })
