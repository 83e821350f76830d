import { lineAround } from './lines.ts'
import { entryEnd } from './read-node.ts'
import type { Edit } from './span.ts'
import { isJson, spelledForJson, spelledScalar } from './spelling.ts'
import { entriesOf, entryAtPointer, nodeAtPointer } from './tree-queries.ts'
import type { Entry, MapNode, Tree } from './tree.ts'

/**
 * Adds `key: valueText` to the map at `parentPointer`, behind `afterKey` or at its end, in the map's own style,
 * indentation and line endings; an empty `valueText` leaves the place behind the colon free. Throws where there is no map
 * and no empty field that could become one.
 */
export function insertEntry(
  tree: Tree,
  parentPointer: string,
  key: string,
  valueText: string,
  afterKey?: string,
): Edit {
  const parent = nodeAtPointer(tree, parentPointer)
  if (parent === null && parentPointer === '') return appendToFile(tree, key, valueText)
  if (parent?.kind === 'map') {
    const after = parent.entries.find((entry) => entry.key === afterKey) ?? parent.entries.at(-1)
    return parent.flow
      ? insertInFlow(tree, parent, after, key, valueText)
      : insertLine(tree, parent, after, key, valueText)
  }
  const entry = parent === null ? entryAtPointer(tree, parentPointer) : null
  if (!entry || entry.colon === null) throw new Error(`no map ${parentPointer}`)
  return insertFirst(tree, entry, key, valueText)
}

/** Takes the entry at `pointer` out, with its comma or its lines and the comment behind it. Throws where there is none. */
export function removeEntry(tree: Tree, pointer: string): Edit {
  const entry = entryAtPointer(tree, pointer)
  if (!entry) throw new Error(`no field ${pointer}`)
  return removeThisEntry(tree, entry)
}

/** As `removeEntry`, for one of two entries of the same name. */
export function removeThisEntry(tree: Tree, entry: Entry): Edit {
  const map = entriesOf(tree).find((place) => place.entry === entry)!.map
  const index = map.entries.indexOf(entry)
  const next = map.entries[index + 1]
  const before = map.entries[index - 1]
  const line = lineAround(tree.text, entry.keySpan.start)
  const alone = isBlank(tree.text.slice(line.start, entry.keySpan.start))
  if (!map.flow && alone) return cut(line.start, afterLine(tree.text, entryEnd(entry)))
  if (next) return cut(entry.keySpan.start, next.keySpan.start)
  if (map.flow && before) return cut(entryEnd(before), entryEnd(entry))
  return cut(entry.keySpan.start, entryEnd(entry))
}

function insertLine(tree: Tree, map: MapNode, after: Entry | undefined, key: string, valueText: string): Edit {
  const line = lineAround(tree.text, map.span.start)
  const column = tree.text.slice(line.start, map.span.start).replace(/^\ufeff/, '').length
  const at = lineAround(tree.text, after ? entryEnd(after) : map.span.end).end
  return insert(at, lineEnding(tree.text) + ' '.repeat(column) + written(tree, key, valueText, false))
}

function insertInFlow(tree: Tree, map: MapNode, after: Entry | undefined, key: string, valueText: string): Edit {
  const text = written(tree, key, valueText, true)
  if (!after) {
    const inner = map.span.start + 1
    return { span: { start: inner, end: Math.max(inner, map.span.end - 1) }, text: ` ${text} ` }
  }
  const line = lineAround(tree.text, after.keySpan.start)
  const indent = tree.text.slice(line.start, after.keySpan.start)
  return insert(
    entryEnd(after),
    isBlank(indent) && map.span.start < line.start ? `,${lineEnding(tree.text)}${indent}${text}` : `, ${text}`,
  )
}

function insertFirst(tree: Tree, parent: Entry, key: string, valueText: string): Edit {
  const { map } = entriesOf(tree).find((place) => place.entry === parent)!
  if (map.flow) return insert(parent.colon! + 1, ` { ${written(tree, key, valueText, true)} }`)
  const line = lineAround(tree.text, map.span.start)
  const column = tree.text.slice(line.start, map.span.start).replace(/^\ufeff/, '').length + 2
  return insert(
    lineAround(tree.text, parent.colon!).end,
    lineEnding(tree.text) + ' '.repeat(column) + written(tree, key, valueText, false),
  )
}

function appendToFile(tree: Tree, key: string, valueText: string): Edit {
  const eol = lineEnding(tree.text)
  const joint = /(?:^\ufeff?|[\r\n])$/.test(tree.text) ? '' : eol
  return insert(tree.text.length, joint + written(tree, key, valueText, false) + eol)
}

function written(tree: Tree, key: string, valueText: string, flow: boolean): string {
  if (isJson(tree)) return `${JSON.stringify(key)}: ${valueText === '' ? '' : spelledForJson(valueText)}`
  return `${spelledScalar(key, 'plain', flow)}:${valueText === '' ? '' : ` ${spelledScalar(valueText, 'plain', flow)}`}`
}

function afterLine(text: string, offset: number): number {
  const { end } = lineAround(text, offset)
  return end + (text.startsWith('\r\n', end) ? 2 : end < text.length ? 1 : 0)
}

export function lineEnding(text: string): string {
  return text.includes('\r\n') ? '\r\n' : '\n'
}

function isBlank(text: string): boolean {
  return /^\ufeff?[ \t]*$/.test(text)
}

function insert(at: number, text: string): Edit {
  return { span: { start: at, end: at }, text }
}

function cut(start: number, end: number): Edit {
  return { span: { start, end }, text: '' }
}
