import { inOrder, noColon, readInRounds } from './read-whole.ts'
import { plainMessage } from './plain-problem.ts'
import { stillOpen } from './scan-line.ts'
import type { Span } from './span.ts'
import type { Comment, Node, SyntaxProblem } from './tree.ts'

/** A line of a file, read without the lines around it. */
export interface LoneLine {
  /** Its places and pointers are counted from the start of the line. */
  readonly root: Node | null
  /** In the file. */
  readonly problems: readonly SyntaxProblem[]
  readonly comments: readonly Comment[]
}

/**
 * A line by the whole grammar, but alone: whatever is wrong with it, the other lines read as if it were not.
 *
 * @param line  from its first sign to where the next line begins
 * @returns     null where it may mean something only together with others
 */
export function readLine(text: string, line: Span): LoneLine | null {
  const alone = text.slice(line.start, line.end)
  if (needsOthers.test(alone) || isContinued(text, line)) return null
  const read = readInRounds(alone)
  if (read === 'too-deep' || read.second !== null) return null
  const inFile = (span: Span): Span => ({ start: span.start + line.start, end: span.end + line.start })
  const said = ({ fix, ...one }: SyntaxProblem): SyntaxProblem => {
    const edits = fix?.edits.map((edit) => ({ ...edit, span: inFile(edit.span) }))
    const placed = { ...one, span: inFile(one.span), ...(fix && edits && { fix: { ...fix, edits } }) }
    return { ...plainMessage(text, placed), inLine: true }
  }
  return {
    root: read.root,
    problems: causes(alone, read.gotOver, read.left).concat(lacksColon(read.root)).map(said),
    comments: read.comments.map((one) => ({ ...one, span: inFile(one.span) })),
  }
}

/** A text alone is the name of a field without the rest. */
function lacksColon(root: Node | null): readonly SyntaxProblem[] {
  if (root?.kind !== 'scalar' || root.style !== 'plain') return []
  const { end } = root.span
  return [{ ...noColon, span: { start: end - 1, end } }]
}

/** The complaints that the others of the same line follow from, as a rule: a bracket without its other, or else what comes first. */
function causes(
  line: string,
  gotOver: readonly SyntaxProblem[],
  left: readonly SyntaxProblem[],
): readonly SyntaxProblem[] {
  const all = inOrder(gotOver.length > 0 ? gotOver : left)
  const lone = stillOpen(line) < 0 ? all.find(({ span }) => /[\]}]/.test(line[span.start] ?? '')) : undefined
  if (lone) return [lone]
  return gotOver.length > 0 ? all.filter(({ code }, i) => i === 0 || !followers.has(code)) : all.slice(0, 1)
}

const followers = new Set(['UNEXPECTED_TOKEN', 'BLOCK_AS_IMPLICIT_KEY'])

/** An anchor, an alias, a type, a name and its value on lines of their own, or the beginning of a text of several lines. */
const needsOthers = /^[?:](?:\s|$)|(?:^|[\s,[{])[&*!]|[ :-][|>][-+\d]{0,2}\s*(?:#.*)?\r?\n?$/

/** Whether the next line closes what this one opens, or is a part of its value that looks like a comment. */
function isContinued(text: string, { start, end }: Span): boolean {
  const [, indent, next] = /^( *)(.*)/.exec(text.slice(end))!
  const column = start - (text.lastIndexOf('\n', start - 1) + 1)
  if (next !== '' && column < indent!.length) return true
  return stillOpen(text.slice(start, end)) > 0 && stillOpen(next!) < 0
}
