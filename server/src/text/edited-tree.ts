import { mappedNode } from './mapped-node.ts'
import type { Edit, Span } from './span.ts'
import { applyEdits } from './span.ts'
import type { Comment, SyntaxFix, SyntaxProblem, Tree } from './tree.ts'

/**
 * A text read as it would be after some edits, with every place where it is in the text as it was typed.
 *
 * @param read  gives the tree of the edited text; where that is null, so is this
 */
export function readEdited<T extends Tree | null>(
  text: string,
  edits: readonly Edit[],
  read: (text: string) => T,
): Tree | (T & null) {
  const tree = read(applyEdits(text, edits))
  if (tree === null) return tree
  const back = wayBack(edits)
  return {
    ...tree,
    text,
    root: tree.root && mappedNode(tree.root, { span, offset: (at) => back(at, 'start'), pointer: (same) => same }),
    problems: tree.problems.map((one): SyntaxProblem => ({
      ...one,
      span: span(one.span),
      ...(one.spoils && { spoils: span(one.spoils) }),
      ...(one.fix && { fix: fix(one.fix) }),
      ...(one.otherFix && { otherFix: fix(one.otherFix) }),
    })),
    comments: tree.comments
      .map((one): Comment => ({ ...one, span: span(one.span) }))
      .filter((one) => text[one.span.start] === '#'),
  }

  function fix(one: SyntaxFix): SyntaxFix {
    return { ...one, edits: one.edits.map((edit) => ({ ...edit, span: span(edit.span) })) }
  }

  function span({ start, end }: Span): Span {
    const from = back(start, 'start')
    return { start: from, end: end === start ? from : Math.max(from, back(end, 'end')) }
  }
}

/** Where an offset of the edited text was; at characters that were taken out, behind them for a start and before them for an end. */
function wayBack(edits: readonly Edit[]): (offset: number, side: 'start' | 'end') => number {
  const sorted = [...edits].sort((a, b) => a.span.start - b.span.start)
  const moved: { readonly at: number; readonly length: number; readonly span: Span }[] = []
  let shift = 0
  for (const { span, text } of sorted) {
    moved.push({ at: span.start + shift, length: text.length, span })
    shift += text.length - (span.end - span.start)
  }
  return (offset, side) => {
    const last = moved[countBefore(moved, side === 'start' ? offset + 1 : offset) - 1]
    if (!last) return offset
    const { at, length, span } = last
    if (offset < at + length) return Math.min(span.start + offset - at, span.end)
    return span.end + (offset - at - length)
  }
}

/** How many begin before an offset, of places in their order. */
function countBefore(places: readonly { readonly at: number }[], offset: number): number {
  let [low, high] = [0, places.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (places[middle]!.at < offset) low = middle + 1
    else high = middle
  }
  return low
}
