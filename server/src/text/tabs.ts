import { lineAround } from './lines.ts'
import { readEdited } from './edited-tree.ts'
import type { Edit, Span } from './span.ts'
import { plainMessage } from './plain-problem.ts'
import type { Tree } from './tree.ts'

/** The indentations that a tab is a part of. */
export function tabIndents(text: string): readonly Span[] {
  return [...text.matchAll(/^ *\t[ \t]*/gm)].map(({ index, 0: indent }) => ({
    start: index,
    end: index + indent.length,
  }))
}

/** Spaces that may be meant by tabs, likeliest first: the file's own step for each, none, or as many as the lines above have. */
export function spacesFor(text: string, indents: readonly Span[]): readonly (readonly Edit[])[] {
  const inPlace = (step: string) =>
    indents.map((span): Edit => ({ span, text: text.slice(span.start, span.end).replaceAll('\t', step) }))
  const asAbove = indents.map((span): Edit => ({ span, text: ' '.repeat(columnAbove(text, span.start)) }))
  return [inPlace(unit(text)), inPlace(''), asAbove]
}

/**
 * A file as it is with spaces for tabs, which is then its only complaint about them.
 *
 * @param read  without the whole grammar of YAML; null where it is needed
 * @returns     null where no spaces put every line in its place
 */
export function readWithoutTabs(text: string, read: (text: string) => Tree | null): Tree | null {
  const indents = tabIndents(text)
  if (indents.length === 0) return null
  for (const edits of spacesFor(text, indents)) {
    const tree = readEdited(text, edits, read)
    if (tree)
      return {
        ...tree,
        problems: [plainMessage(text, { code: 'TAB_AS_INDENT', message: '', span: indents[0]! }), ...tree.problems],
      }
  }
  return null
}

/** Of the nearest line above without a tab, behind the dash of an item; a step further in below a name without a value. */
function columnAbove(text: string, start: number): number {
  for (let at = start - 1; at >= 0; at = lineAround(text, at).start - 1) {
    const line = lineAround(text, at)
    const typed = text.slice(line.start, line.end).replace(/#.*/, '').trimEnd()
    if (typed === '' || /^ *\t/.test(typed)) continue
    return /^ *(?:- +)*/.exec(typed)![0].length + (typed.endsWith(':') ? unit(text).length : 0)
  }
  return 0
}

/** The file's own step of indentation. */
function unit(text: string): string {
  return /:[ \t]*(?:#.*)?\r?\n( +)\S/.exec(text)?.[1] ?? '  '
}
