import type { Edit, Span } from './span.ts'
import { applyEdits } from './span.ts'
import type { Comment, Entry, Node, SyntaxProblem, Tree } from './tree.ts'

/**
 * A text read as it would be after some edits, with every place where it is in the text as it was typed.
 *
 * @param read  gives the tree of the edited text
 */
export function readEdited(text: string, edits: readonly Edit[], read: (text: string) => Tree): Tree {
  const back = wayBack(edits)
  const tree = read(applyEdits(text, edits))
  return {
    text,
    root: tree.root && node(tree.root),
    problems: tree.problems.map((one): SyntaxProblem => ({ ...one, span: span(one.span) })),
    comments: tree.comments
      .map((one): Comment => ({ ...one, span: span(one.span) }))
      .filter((one) => text[one.span.start] === '#'),
  }

  function node<T extends Node>(one: T): T {
    if (one.kind === 'map') return { ...one, span: span(one.span), entries: one.entries.map(entry) }
    if (one.kind === 'list') return { ...one, span: span(one.span), items: one.items.map((item) => item && node(item)) }
    return { ...one, span: span(one.span) }
  }

  function entry(one: Entry): Entry {
    const { keySpan, colon, value } = one
    return {
      ...one,
      keySpan: span(keySpan),
      colon: colon === null ? null : back(colon, 'start'),
      value: value && node(value),
    }
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
    const last = moved.findLast(({ at }) => (side === 'start' ? at <= offset : at < offset))
    if (!last) return offset
    const { at, length, span } = last
    if (offset < at + length) return Math.min(span.start + offset - at, span.end)
    return span.end + (offset - at - length)
  }
}
