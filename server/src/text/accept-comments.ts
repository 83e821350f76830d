import { lineStarts, positionAt } from './lines.ts'
import type { Span } from './span.ts'
import { entriesOf } from './tree-queries.ts'
import type { Tree } from './tree.ts'

/** `# accept rule: because`, as it stands in a file. */
export interface AcceptComment {
  readonly rule: string
  /** '' where no reason is given, which is itself worth a finding. */
  readonly because: string
  /** The clause itself, from `accept` to the end of its reason. */
  readonly span: Span
  /** The id in it. */
  readonly ruleSpan: Span
  /** The entries on the comment's line; none for a comment on a line of its own. */
  readonly pointers: readonly string[]
}

/** All acceptances in comments. One comment may hold several, parted by ` ; `, also behind other words. */
export function acceptComments(tree: Tree): AcceptComment[] {
  const found = tree.comments.filter(({ text }) => text.includes('accept'))
  if (found.length === 0) return []
  const starts = lineStarts(tree.text)
  const line = (offset: number) => positionAt(starts, offset).line
  return found.flatMap(({ span }) => {
    const here = line(span.start)
    const pointers = entriesOf(tree)
      .filter(({ entry: { keySpan, value } }) => {
        return line(keySpan.start) === here || (value?.kind === 'scalar' && line(value.span.end) === here)
      })
      .map(({ entry }) => entry.pointer)
    return clauses(tree.text, span).map((clause) => ({ ...clause, pointers: [...new Set(pointers)] }))
  })
}

function clauses(text: string, { start, end }: Span): Omit<AcceptComment, 'pointers'>[] {
  const comment = text.slice(start, end)
  return [...comment.matchAll(clause)].map(({ index, 1: lead, 2: rule, 3: because }) => {
    const from = start + index + lead!.length
    const length = comment.slice(index + lead!.length).match(clauseEnd)![0].length
    const id = text.indexOf(rule!, from + 'accept'.length)
    const ruleSpan = { start: id, end: id + rule!.length }
    return { rule: rule!, because: (because ?? '').trim(), span: { start: from, end: from + length }, ruleSpan }
  })
}

const clause = /(^#+\s*|;\s+)accept\s+([\w-]+)\s*(?::(.*?))?(?=\s+;\s+accept\s|\s*$)/g
const clauseEnd = /^.*?(?=\s+;\s+accept\s|\s*$)/
