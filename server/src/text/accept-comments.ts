import { groupBy } from './group.ts'
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
  const onLine = groupBy(
    entriesOf(tree).flatMap(({ entry: { keySpan, value, pointer } }) => [
      { line: line(keySpan.start), pointer },
      ...(value?.kind === 'scalar' ? [{ line: line(value.span.end), pointer }] : []),
    ]),
    (one) => one.line,
  )
  return found.flatMap(({ span }) => {
    const pointers = (onLine.get(line(span.start)) ?? []).map(({ pointer }) => pointer)
    return clauses(tree.text, span).map((clause) => ({ ...clause, pointers: [...new Set(pointers)] }))
  })
}

function clauses(text: string, { start, end }: Span): Omit<AcceptComment, 'pointers'>[] {
  const comment = text.slice(start, end)
  const leads = [...comment.matchAll(lead)].map(({ index, 0: { length } }) => ({ index, from: index + length }))
  const ends = endsOf(comment, leads)
  let past = 0
  return leads.flatMap(({ index, from }, i) => {
    if (index < past) return []
    const said = comment.slice(from, ends[i]).trimEnd()
    const found = clause.exec(said)
    if (!found) return []
    past = ends[i]!
    const span = { start: start + from, end: start + from + said.length }
    const id = text.indexOf(found[1]!, span.start + 'accept'.length)
    const ruleSpan = { start: id, end: id + found[1]!.length }
    return [{ rule: found[1]!, because: (found[2] ?? '').trim(), span, ruleSpan }]
  })
}

/** Where each clause ends at the latest: at the next lead that has a blank before its semicolon. */
function endsOf(comment: string, leads: readonly { index: number }[]): number[] {
  const ends: number[] = []
  let end = comment.length
  for (const [i, { index }] of [...leads.entries()].reverse()) {
    ends[i] = end
    if (0 < index && /\s/.test(comment[index - 1]!)) end = index
  }
  return ends
}

const lead = /(?:^#+\s*|;\s+)(?=accept\s)/g
const clause = /^accept\s+([\w-]+)\s*(?::(.*))?$/s
