import { phrase, type Phrase } from '../wording/phrase.ts'
import { lineStarts, positionAt } from './lines.ts'
import { lineProblem as problem, type Line } from './line.ts'
import { isFull, linesOf, surroundings } from './lines-around.ts'
import type { Shape } from './shape.ts'
import { stillOpen } from './scan-line.ts'
import { ownColon } from './own-colon.ts'
import { shortened } from './shortened.ts'
import type { Edit } from './span.ts'
import type { OtherReading, SyntaxProblem, Tree } from './tree.ts'
import { readingsWithin } from './within-line.ts'

/** The readings to try, likeliest first, of the lines where YAML complains and those beside them. */
export function readingsOf({ text, problems }: Tree, shape?: Shape): readonly OtherReading[] {
  const starts = lineStarts(text)
  const lines = linesOf(text, starts)
  const full = lines.filter(isFull)
  const suspects = new Map<number, boolean>()
  for (const { span, code, inLine } of problems.slice(0, mostProblems)) {
    const at = full.findIndex(({ start }) => start >= starts[positionAt(starts, span.start).line]!)
    for (const near of around(full, at)) suspects.set(near, suspects.get(near) || (!inLine && ofColumns.has(code)))
  }
  const gauges = Array.from(text.matchAll(gauge), ({ index, 1: size = '' }) => gaugeSign(index, size))
  return [...suspects].flatMap(([at, isColumn]) => [
    ...gauges,
    ...readingsWithin(full[at]!, surroundings(text, full, at, shape)),
    ...(isColumn ? inOtherColumns(lines, full, at) : []),
    ...item(full, at),
    ...comment(full[at]!, shape),
    ...ownColon(full[at]!, surroundings(text, full, at, shape)),
  ])
}

/** Those of a line and the ones beside it, counted from 0. */
export function readingsAt(text: string, line: number, shape?: Shape): readonly OtherReading[] {
  const lines = linesOf(text, lineStarts(text))
  const full = lines.filter(isFull)
  const at = full.findIndex(({ start }) => start >= (lines[line]?.start ?? text.length))
  return around(full, at < 0 ? full.length : at).flatMap((near) => [
    ...readingsWithin(full[near]!, surroundings(text, full, near, shape)),
    ...inOtherColumns(lines, full, near),
    ...item(full, near),
    ...comment(full[near]!, shape),
    ...ownColon(full[near]!, surroundings(text, full, near, shape)),
  ])
}

const around = (full: readonly Line[], at: number): readonly number[] =>
  at < 0 ? [] : [at, at + 1, at - 1].filter((near) => 0 <= near && near < full.length)

const inOtherColumns = (lines: readonly Line[], full: readonly Line[], at: number): readonly OtherReading[] => [
  ...uncommented(lines, full[at]!),
  ...moved(full, at),
]

/** `{ size: #10, … }`: a wire gauge as America writes it. */
const gauge = /(?<=\{[^}\n]*\bsize: )#(\d{1,2})(?=[ ,}])/g

function gaugeSign(start: number, size: string): OtherReading {
  const edits = [{ span: { start, end: start + 1 + size.length }, text: `${size} AWG` }]
  const sentence = phrase`#${size} should be ${size} AWG: the # begins a comment, so that YAML loses the rest of the line.`
  const fix = { edits, why: phrase`a wire gauge`, certainty: 'same' } as const
  return { edits, problem: problem('comment', sentence, start, size.length + 1, fix) }
}

/** What YAML says of a line in the wrong column. */
const ofColumns = new Set(['BAD_INDENT', 'BLOCK_AS_IMPLICIT_KEY'])

/** The group above it is still a comment, as in a form of which only a member was taken. */
function uncommented(lines: readonly Line[], line: Line): readonly OtherReading[] {
  const above = lines.slice(0, lines.indexOf(line))
  const head = above.findLast(({ text, indent }) => indent < line.indent || !/^ *#/.test(text))
  const name = head && /^ *(# ?)([\w-]+):\s*(?:#.*)?$/.exec(head.text)
  if (!head || !name) return []
  const at = head.start + head.indent
  const edits = [{ span: { start: at, end: at + name[1]!.length }, text: '' }]
  const own = nameOf(line)
  const sentence = phrase`${own} is indented under ${name[2]}, which is still a comment.`
  const start = line.start + line.indent
  const why = phrase`uncomment ${name[2]}`
  return [{ edits, problem: problem('indent', sentence, start, own.length, { edits, why, certainty: 'guess' }) }]
}

/** Beyond these a file is no record. */
const mostProblems = 6

/** The line, alone with what is deeper or with its neighbours below, in a column of the lines above it. */
function moved(lines: readonly Line[], at: number): readonly OtherReading[] {
  const line = lines[at]!
  const opening = at > 0 && stillOpen(lines[at - 1]!.text) > 0 ? lines[at - 1]! : null
  const columns = new Set(opening ? [opening.column + 2] : [])
  let margin = Infinity
  for (let above = at - 1; 0 <= above && margin > 0; above--) {
    const { indent, column, text } = lines[above]!
    if (indent >= margin && column >= margin) continue
    if (above === at - 1 && /:[ \t]*(?:#.*)?$/.test(text)) columns.add(column + 2)
    columns.add(column)
    columns.add(indent)
    margin = Math.min(margin, indent)
  }
  columns.delete(line.indent)
  const rest = lines.slice(at + 1)
  const deeper = until(rest, ({ indent }) => indent <= line.indent)
  const beside = until(
    rest,
    ({ indent, text }) => indent < line.indent || (indent === line.indent && /^ *-/.test(text)),
  )
  return [...columns].flatMap((column) =>
    [...new Set([0, deeper, beside])].map((count) => {
      const edits = [line, ...rest.slice(0, count)].map((one) => shifted(one, column - line.indent))
      const inside = opening && opening.column < column
      return { edits, problem: inside ? bracketed(line, edits) : misplaced(line, column, edits) }
    }),
  )
}

function until(lines: readonly Line[], isEnd: (line: Line) => boolean): number {
  const end = lines.findIndex(isEnd)
  return end < 0 ? lines.length : end
}

const shifted = ({ start, indent }: Line, by: number): Edit =>
  by < 0
    ? { span: { start, end: start + Math.min(indent, -by) }, text: '' }
    : { span: { start, end: start }, text: ' '.repeat(by) }

function misplaced(line: Line, column: number, edits: readonly Edit[]): SyntaxProblem {
  const name = nameOf(line)
  const sentence =
    line.indent === 0
      ? phrase`${name} is at the left margin, its neighbours are indented by ${spaces(column)}.`
      : phrase`${name} is indented by ${spaces(line.indent)}, its neighbours by ${String(column)}.`
  const why = column === 0 ? phrase`move ${name} to the left margin` : phrase`indent ${name} by ${spaces(column)}`
  return problem('indent', sentence, line.start + line.indent, name.length, { edits, why, certainty: 'guess' })
}

function bracketed(line: Line, edits: readonly Edit[]): SyntaxProblem {
  const name = nameOf(line)
  const sentence = phrase`The brackets of the line above are still open at ${name}: indent it further than that line.`
  const why = phrase`indent ${name} further`
  const text = shortened(line.text.trim())
  return problem('indent', sentence, line.start + line.indent, name.length, { edits, why, certainty: 'guess', text })
}

const nameOf = ({ text }: Line) => shortened(/^ *(?:- +)*([^:#]*)/.exec(text)![1]!.trim())

/** `{ name: fridge }` or `-2 { name: fridge }` beside items in braces: their dash is missing, or is not alone. */
function item(full: readonly Line[], at: number): readonly OtherReading[] {
  const { text } = full[at]!
  if (/^ *- /.test(text)) return firstItem(full, at)
  const typed = /^ *[^\s{[#]{0,2} ?(?=\{)/.exec(text)?.[0]
  const dashes = [full[at - 1], full[at + 1]].map((beside) => /^ *- (?=\{)/.exec(beside?.text ?? '')?.[0])
  const dash = dashes.find((found) => found !== undefined)
  return typed === undefined || dash === undefined ? [] : [dashed(full[at]!, typed.length, dash)]
}

/** The first of a list whose second has a dash. */
function firstItem(full: readonly Line[], at: number): readonly OtherReading[] {
  const { indent, column } = full[at]!
  const group = full.slice(0, at).findLastIndex((line) => line.indent <= indent)
  const first = full[group + 1]
  return 0 <= group && /:\s*(?:#.*)?$/.test(full[group]!.text) && first?.indent === column && group + 1 < at
    ? [dashed(first, column, ' '.repeat(indent) + '- ')]
    : []
}

/** A line with a dash in place of its first characters. */
function dashed({ start, text }: Line, length: number, dash: string): OtherReading {
  const edits = [{ span: { start, end: start + length }, text: dash }]
  const words = text.trim()
  const sentence = phrase`${shortened(words)} is in a list without the dash that begins an item.`
  const after = shortened(dash.trim() + ' ' + text.slice(length))
  const fix = { edits, why: phrase`a dash before it`, certainty: 'guess', text: after } as const
  return { edits, problem: problem('item', sentence, start + text.indexOf(words), words.length, fix) }
}

/** A line without a colon may be a comment whose `#` is missing. */
function comment({ start, text, indent }: Line, shape: Shape | undefined): readonly OtherReading[] {
  const words = text.split(' #')[0]!.trim()
  if (!/^[\p{L}"(]/u.test(words) || /:(?:\s|$)|[[\]{}]/.test(words) || !isRemark(words)) return []
  const [, name = ''] = /^([A-Za-z_][\w-]*) *(?:-|->|=>|\u2192) /.exec(words) ?? []
  if (shape?.names.has(name)) return []
  const at = start + indent
  const edits = [{ span: { start: at, end: at }, text: '# ' }]
  const sentence = phrase`This line is no field: "${shortened(words)}". Make it a comment (#).`
  const why = phrase`make it a comment`
  return [{ edits, problem: problem('stray-text', sentence, at, words.length, { edits, why, certainty: 'guess' }) }]
}

/** Two words, a name and a number, or a name and a semicolon are a field without its colon. */
const isRemark = (words: string) =>
  /^\S+\s+\S+\s/.test(words) && !/^\w+;\s|^[A-Za-z_][\w-]*:\S|^\S+\s+[-+±]?[\d=]/.test(words)

const spaces = (count: number): Phrase => (count === 1 ? phrase`1 space` : phrase`${String(count)} spaces`)
