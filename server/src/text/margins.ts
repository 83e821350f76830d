import { phrase } from '../wording/phrase.ts'
import { diffMarks } from './diff-marks.ts'
import { readEdited } from './edited-tree.ts'
import { lineProblem, type Line } from './line.ts'
import { lineStarts } from './lines.ts'
import { linesOf } from './lines-around.ts'
import type { Margin } from './margin.ts'
import type { Shape } from './shape.ts'
import { shortened } from './shortened.ts'
import { applyEdits, type Edit } from './span.ts'
import type { Tree } from './tree.ts'

/** Lines of which a margin may be a part. */
const suspicious = /(?:^|\n)[ \t]*(?:[+>|*;%$@\u2022\u2502]|\/\/|\d+(?![\d.,]*\d)|-[^ \n])/

/** How a text is read. */
interface Readers {
  /** One that may be broken, to compare it with others. */
  readonly quickly: (text: string) => Tree
  readonly read: (text: string) => Tree
}

/**
 * A text with a margin, read without it: all of it is one problem, whose fix takes it out.
 *
 * @param typed  the text as it is read with it
 * @returns      null where there is none, or nothing is gained by reading without it
 */
export function readWithoutMargin(typed: Tree, shape: Shape, { quickly, read }: Readers): Tree | null {
  const { text } = typed
  if (typed.root !== null && !suspicious.test(text)) return null
  const lines = linesOf(text, lineStarts(text))
  const margins = [diffMarks(lines), numbers(lines, shape), signs(lines), comments(lines)].flatMap(
    (found) => found ?? [],
  )
  if (margins.length === 0) return null
  const most = { problems: typed.problems.length, misfits: misfitsOf(typed, shape) }
  const tries = margins
    .flatMap((margin) =>
      margin.ways.map((edits) => {
        const tree = readEdited(text, edits, quickly)
        return { margin, edits, problems: tree.problems.length, misfits: misfitsOf(tree, shape) }
      }),
    )
    .filter(
      ({ margin, problems, misfits }) =>
        (misfits < most.misfits || (misfits === most.misfits && problems < most.problems)) &&
        problems <= (margin.isUnsure ? 0 : most.problems),
    )
  const [best] = tries.sort((a, b) => a.problems - b.problems || a.misfits - b.misfits)
  if (!best) return null
  const { margin, edits } = best
  const tree = readEdited(text, edits, read)
  const [{ span }] = edits as [Edit]
  const [first] = applyEdits(text, edits)
    .slice(span.start)
    .trim()
    .split(/[\r\n]/)
  const fix = { edits, why: phrase`without them`, certainty: 'guess', text: shortened(first!.trim()) } as const
  const length = Math.max(
    1,
    text
      .slice(span.start, span.end)
      .split(/[\r\n]/)[0]!
      .trimEnd().length,
  )
  const own = lineProblem('margin', margin.sentence, span.start, length, fix)
  return { ...tree, problems: [own, ...tree.problems].sort((a, b) => a.span.start - b.span.start) }
}

/** A text of which nothing was read has no field in its place. */
const misfitsOf = (tree: Tree, shape: Shape) => (tree.root?.kind === 'map' ? shape.misfits(tree) : Infinity)

/** A line with something before its own text. */
interface Marked {
  readonly start: number
  readonly length: number
  readonly blanks: number
  readonly rest: string
}

/** Without the mark and up to as many blanks behind it as the line has that has fewest. */
function stripped(marked: readonly Marked[], lines: readonly Line[]): readonly (readonly Edit[])[] {
  const full = marked.filter(({ rest }) => rest !== '')
  const most = Math.min(8, ...full.map(({ blanks }) => blanks))
  const without = (count: number, indent = 0) =>
    marked.map(({ start, length, blanks }): Edit => {
      const end = start + length + Math.min(count, blanks)
      return { span: { start, end }, text: ' '.repeat(indent) }
    })
  const above = lines.findLast(({ start, text }) => start < (marked[0]?.start ?? 0) && text.trim() !== '')
  return [
    ...Array.from({ length: most + 1 }, (_, i) => without(most - i)),
    ...(above && marked.length === 1 ? [without(most, above.column), without(most, above.indent)] : []),
  ]
}

function markedBy({ start, text }: Line, mark: string): Marked {
  const rest = text.slice(mark.length)
  const own = rest.trim()
  return { start, length: mark.length, blanks: own === '' ? rest.length : /^[ \t]*/.exec(rest)![0].length, rest: own }
}

/** `12  voc: 22.1 V`, `12: voc: 22.1 V`, `12| voc: 22.1 V`: numbers that go up by one. */
function numbers(lines: readonly Line[], { names }: Shape): Margin | null {
  const found: Marked[] = []
  let last: number | null = null
  for (const line of lines) {
    const [mark, number = ''] =
      /^[ \t]*(\d{1,5})(?:[:)\]](?!\/)|\.(?=[ \t]|$)|[ \t]*[|\u2502]|(?=[ \t]|$))/.exec(line.text) ?? []
    if (mark === undefined || (last !== null && Number(number) !== last + 1)) {
      if (line.text.trim() !== '') last = null
      continue
    }
    last = Number(number)
    found.push(markedBy(line, mark))
  }
  const isField = ({ rest }: Marked) => names.has(/^(?:- +)*["']?([A-Za-z_][\w-]*)["']?:/.exec(rest)?.[1] ?? '')
  const sentence = phrase`Line numbers are not part of a record: take them out.`
  return found.some(isField) ? { sentence, ways: stripped(found, lines) } : null
}

/** `> voc: 22.1 V` as in a quoted mail, `| voc: 22.1 V`, `// voc: 22.1 V` */
function signs(lines: readonly Line[]): Margin | null {
  const found = lines.flatMap((line) => {
    const [mark, sign] = /^[ \t]*((?:> ?)*>|[|*;%$\u2022\u2502]|\/\/)/.exec(line.text) ?? []
    return mark === undefined ? [] : [{ sign: sign!.replaceAll(' ', ''), marked: markedBy(line, mark) }]
  })
  const [{ sign } = { sign: '' }] = found
  const own = found.filter((one) => one.sign === sign).map(({ marked }) => marked)
  if (own.length < (sign.startsWith('>') ? 1 : 3)) return null
  const sentence =
    own.length === 1
      ? phrase`A line begins with ${sign}, which is not part of a record: take it out.`
      : phrase`${own.length} lines begin with ${sign}, which is not part of a record: take it out.`
  return { sentence, ways: stripped(own, lines), isUnsure: !sign.startsWith('>') }
}

/** A record of which every line is a comment. */
function comments(lines: readonly Line[]): Margin | null {
  const full = lines.filter(({ text }) => text.trim() !== '')
  if (full.length < 3 || !full.every(({ text }) => text.startsWith('#'))) return null
  const marked = full.map((line) => markedBy(line, '#'))
  const fields = marked.filter(({ rest }) => /^(?:- +)*[A-Za-z_][\w-]*:(?: |$)|^- |^#/.test(rest))
  const sentence = phrase`Every line is a comment: remove the # from the lines that are fields.`
  return { sentence, ways: [marked, fields].flatMap((some) => stripped(some, lines)), isUnsure: true }
}
