import { mappedEntry, mappedNode, type Way } from './mapped-node.ts'
import type { LoneLine } from './read-line.ts'
import { entryEnd } from './read-node.ts'
import { childPointer } from './pointer.ts'
import { afterSpaces, scanLines, stillOpen, type Line } from './scan-line.ts'
import { deepest, fieldName, scanValue } from './scan-value.ts'
import type { Span } from './span.ts'
import type { Comment, Entry, ListNode, MapNode, Node, ScalarNode, SyntaxProblem, Tree } from './tree.ts'

/**
 * Reads what nearly all records are: names and values on lines of their own, nested by blanks, lists, and brackets that end
 * on their line. It is some 30 times as fast as the whole grammar of YAML and agrees with it wherever it reads a text
 * at all.
 *
 * @returns null where anything is unusual: `yaml` reads such a text
 */
export function scan(text: string): Tree | null {
  return treeOrNull(scanned(text, () => null))
}

/** Without the place at which a text could not be scanned. */
export const treeOrNull = (read: Tree | number): Tree | null => (typeof read === 'number' ? null : read)

/**
 * As `scan`, where single lines are unusual or broken in themselves.
 *
 * @param readLine  reads such a line, from its first sign to where the next line begins; null where it is not to be read alone
 * @returns         the start of the line where it got no further, or of the one below, where it cannot be read this way
 */
export function scanAround(text: string, readLine: (text: string, line: Span) => LoneLine | null): Tree | number {
  const problems: SyntaxProblem[] = []
  const alone: { readonly line: Span; readonly comments: readonly Comment[] }[] = []
  const tree = scanned(text, (start, pastEnd) => {
    const newline = text.indexOf('\n', pastEnd)
    const line = { start, end: newline < 0 ? text.length : newline + 1 }
    const read = readLine(text, line)
    if (!read) return null
    problems.push(...read.problems)
    alone.push({ line, comments: read.comments })
    return read.root
  })
  if (typeof tree === 'number') return tree
  // in a line that was read alone a # may be anything
  const others = tree.comments.filter(
    ({ span }) => !alone.some(({ line }) => line.start <= span.start && span.start < line.end),
  )
  const comments = [...others, ...alone.flatMap((one) => one.comments)].sort((a, b) => a.span.start - b.span.start)
  return { ...tree, problems: problems.sort((a, b) => a.span.start - b.span.start), comments }
}

function scanned(text: string, readAlone: ReadAlone): Tree | number {
  const comments: Comment[] = []
  const lines = scanLines(text, comments)
  if (!lines?.length || lines[0]!.indent !== 0) return 0
  const reader = new Reader(text, lines, readAlone)
  const root = reader.map('', 0, 0)
  const rest = reader.next()
  return root && !rest ? { text, root, problems: [], comments } : (rest?.start ?? text.length)
}

/** What a line is that cannot be scanned, by its first sign and its end; its places and pointers are counted from its start. */
type ReadAlone = (start: number, end: number) => Node | null

class Reader {
  private at = 0
  private readonly text: string
  private readonly lines: readonly Line[]
  private readonly readAlone: ReadAlone

  constructor(text: string, lines: readonly Line[], readAlone: ReadAlone) {
    this.text = text
    this.lines = lines
    this.readAlone = readAlone
  }

  next(): Line | undefined {
    return this.lines[this.at]
  }

  map(pointer: string, indent: number, depth: number): MapNode | null {
    const { start } = this.lines[this.at]!
    const entries: Entry[] = []
    for (let line = this.lines[this.at]; line && indent <= line.indent; line = this.lines[this.at]) {
      if (line.indent !== indent) return null
      const entry = this.entry(line, pointer, depth, entries.length === 0)
      if (!entry) return null
      entries.push(entry)
    }
    return { kind: 'map', pointer, span: { start, end: entryEnd(entries.at(-1)!) }, entries, flow: false }
  }

  private entry({ start, end, indent }: Line, parent: string, depth: number, isFirst: boolean): Entry | null {
    const { text } = this
    fieldName.lastIndex = start
    const name = fieldName.exec(text)
    this.at++
    if (!name) return this.entryAlone({ start, end, indent }, parent, isFirst)
    const colon = start + name[0].length - 1
    const key = text.slice(start, colon)
    const pointer = `${parent}/${key}`
    const from = afterSpaces(text, colon + 1)
    let value: Node | null = null
    if (from < end) {
      value = scanValue(text, pointer, from, end)
      if (!value) return this.entryAlone({ start, end, indent }, parent, isFirst)
      if (this.isDeeper(indent)) return null
    } else if (this.isNested(indent)) {
      value = this.below(pointer, depth)
      if (!value) return null
    }
    return { key, keySpan: { start, end: colon }, pointer, colon, value }
  }

  private entryAlone(line: Line, parent: string, isFirst: boolean): Entry | null {
    const root = this.lineAlone(line)
    // a list right under it would be its value
    if (!root || this.isNested(line.indent)) return null
    const way = inFile(line.start, (pointer) => parent + pointer)
    // the first line may be a text that is the value of the name above
    if (root.kind === 'scalar' && root.style === 'plain' && !isFirst) return withoutColon(mappedNode(root, way), parent)
    return root.kind === 'map' && !root.flow && root.entries.length === 1 ? mappedEntry(root.entries[0]!, way) : null
  }

  private itemAlone(line: Line, pointer: string): Node | null {
    const root = this.lineAlone(line)
    const item = root?.kind === 'list' && !root.flow && root.items.length === 1 ? root.items[0]! : null
    const way = inFile(line.start, (own) => pointer + own.slice('/0'.length))
    return item && mappedNode(item, way)
  }

  /** null where more than the brackets of the line goes on below it. */
  private lineAlone(line: Line): Node | null {
    const end = this.endOf(line)
    return this.isDeeper(line.indent) ? null : this.readAlone(line.start, end)
  }

  /** Where a line ends, with those that its brackets go on over. */
  private endOf({ start, end, indent }: Line): number {
    let last = end
    for (; this.isDeeper(indent) && stillOpen(this.text.slice(start, last)) > 0; this.at++)
      last = this.lines[this.at]!.end
    return last
  }

  private isNested(indent: number): boolean {
    const next = this.lines[this.at]
    return next !== undefined && (indent < next.indent || (indent === next.indent && this.isItem(next)))
  }

  /** What is below a name without a value: a map or list that is indented further, or a list right under it. */
  private below(pointer: string, depth: number): Node | null {
    if (deepest <= depth) return null
    const next = this.lines[this.at]!
    return this.isItem(next) ? this.list(pointer, next.indent, depth + 1) : this.map(pointer, next.indent, depth + 1)
  }

  private isItem({ start, end }: Line): boolean {
    return this.text[start] === '-' && this.text[start + 1] === ' ' && start + 1 < end
  }

  private list(pointer: string, indent: number, depth: number): ListNode | null {
    const { start } = this.lines[this.at]!
    const items: Node[] = []
    for (let line = this.lines[this.at]; line && indent <= line.indent; line = this.lines[this.at]) {
      if (line.indent !== indent) return null
      if (!this.isItem(line)) break
      const item = this.item(line, `${pointer}/${items.length}`, depth)
      if (!item) return null
      items.push(item)
    }
    return { kind: 'list', pointer, span: { start, end: items.at(-1)!.span.end }, items, flow: false }
  }

  private item(line: Line, pointer: string, depth: number): Node | null {
    const { text } = this
    const from = afterSpaces(text, line.start + 1)
    fieldName.lastIndex = from
    if (fieldName.test(text)) {
      line.indent += from - line.start
      line.start = from
      return deepest <= depth ? null : this.map(pointer, line.indent, depth + 1)
    }
    this.at++
    const value = scanValue(text, pointer, from, line.end)
    if (!value) return this.itemAlone(line, pointer)
    return this.isDeeper(line.indent) ? null : value
  }

  private isDeeper(indent: number): boolean {
    const next = this.lines[this.at]
    return next !== undefined && indent < next.indent
  }
}

const withoutColon = ({ text, span }: ScalarNode, parent: string): Entry => ({
  key: text,
  keySpan: span,
  pointer: childPointer(parent, text),
  colon: null,
  value: null,
})

/** The places of a line that was read from its start on, in the file. */
const inFile = (start: number, pointer: Way['pointer']): Way => ({
  span: (span) => ({ start: span.start + start, end: span.end + start }),
  offset: (offset) => offset + start,
  pointer,
})
