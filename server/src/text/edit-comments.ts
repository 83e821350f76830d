import { lineAround } from './lines.ts'
import type { Edit } from './span.ts'
import { entriesOf, entryAtPointer, nodeAtPointer } from './tree-queries.ts'
import type { Tree } from './tree.ts'

/**
 * Adds `comment` behind the field at `pointer`: on the line where a one-line value ends, on the key's line of a map, list
 * or block text. A comment that stands there stays; the new one follows behind ` ; `. Not for JSON, which has no comments.
 */
export function appendComment(tree: Tree, pointer: string, comment: string): Edit {
  const { text } = tree
  const { end } = lineAround(text, outOfQuotes(tree, anchorOffset(tree, pointer)))
  const standing = tree.comments.find(({ span }) => span.start <= end && end <= endOfLine(text, span.end))
  if (standing && lineAround(text, standing.span.start).end === end) {
    const joint = standing.text === '' ? ' ' : ' ; '
    return { span: { start: standing.span.end, end: standing.span.end }, text: joint + comment }
  }
  let start = end
  while (0 < start && (text[start - 1] === ' ' || text[start - 1] === '\t')) start--
  return { span: { start, end }, text: `${start === 0 ? '' : '  '}# ${comment}` }
}

function anchorOffset(tree: Tree, pointer: string): number {
  const entry = entryAtPointer(tree, pointer)
  const node = entry ? entry.value : nodeAtPointer(tree, pointer)
  if (node?.kind === 'scalar' && node.style !== 'block') return node.span.end
  if (entry) return entry.colon ?? entry.keySpan.end
  return node?.span.start ?? 0
}

/** A line may end inside a quoted text that goes on below; a comment can stand only behind it. */
function outOfQuotes(tree: Tree, offset: number): number {
  const { end } = lineAround(tree.text, offset)
  const running = entriesOf(tree).find(
    ({ entry: { value } }) =>
      value?.kind === 'scalar' && value.style !== 'block' && value.span.start < end && end < value.span.end,
  )
  return running ? outOfQuotes(tree, running.entry.value!.span.end) : offset
}

function endOfLine(text: string, offset: number): number {
  return lineAround(text, offset).end
}
