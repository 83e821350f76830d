import { inOrder, readInRounds } from './read-whole.ts'
import { plainMessage } from './plain-problem.ts'
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
  if (sharesName.test(alone) || isContinued(text, line)) return null
  const read = readInRounds(alone)
  if (read === 'too-deep' || read.second !== null) return null
  const inFile = (span: Span): Span => ({ start: span.start + line.start, end: span.end + line.start })
  const said = (one: SyntaxProblem) => ({ ...plainMessage(text, { ...one, span: inFile(one.span) }), inLine: true })
  return {
    root: read.root,
    problems: causes(alone, read.gotOver, read.left).map(said),
    comments: read.comments.map((one) => ({ ...one, span: inFile(one.span) })),
  }
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

/** An anchor, an alias or a type. */
const sharesName = /(?:^|[\s,[{])[&*!]/

/** Whether the next line closes what this one opens. */
function isContinued(text: string, { start, end }: Span): boolean {
  if (stillOpen(text.slice(start, end)) <= 0) return false
  return stillOpen(/^\s*.*/.exec(text.slice(end))![0]) < 0
}

const stillOpen = (line: string) => (line.match(/[[{]/g)?.length ?? 0) - (line.match(/[\]}]/g)?.length ?? 0)
