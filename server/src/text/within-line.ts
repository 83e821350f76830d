import { joined, phrase } from '../wording/phrase.ts'
import { lineProblem, type Line } from './line.ts'
import { stillOpen } from './scan-line.ts'
import { shortened } from './shortened.ts'
import type { Edit } from './span.ts'
import type { OtherReading, SyntaxProblem } from './tree.ts'

/**
 * The readings to try of a line that is itself mistyped.
 *
 * @param next  the line below that holds something
 * @param eol   what ends the lines of the file
 */
export const readingsWithin = (line: Line, next: Line | undefined, eol: string): readonly OtherReading[] =>
  line.text.length > longest
    ? []
    : [
        ...dashApart(line),
        ...twoFields(line, eol),
        ...withComma(line),
        ...closed(line, next),
        ...withoutValue(line, next),
      ]

/** No line of a record has more characters. */
const longest = 500

/** `-id: bimini` */
function dashApart({ start, text }: Line): readonly OtherReading[] {
  const [, before, name] = /^( *-)([A-Za-z_][\w-]*): /.exec(text) ?? []
  if (before === undefined) return []
  const at = start + before.length
  const sentence = phrase`A space is missing after the dash before ${name}.`
  const why = phrase`a space after the dash`
  return [
    reading('item', [insert(at, ' ')], [at - 1, text.trim().length], sentence, why, `- ${text.slice(before.length)}`),
  ]
}

/** `size: { length: 1190 mm } weight: 2.2 kg`: two lines that became one. */
function twoFields({ start, text, column }: Line, eol: string): readonly OtherReading[] {
  const [, first, joint = '', second = ''] =
    /^( *(?:- +)*[A-Za-z_][\w-]*:.*?[}\]])([ \t]*)([A-Za-z_][\w-]*:(?: .*)?)$/.exec(text) ?? []
  if (first === undefined) return []
  const [at, end] = [start + first.length, start + first.length + joint.length]
  const name = second.slice(0, second.indexOf(':'))
  const sentence = phrase`${name} needs a line of its own.`
  const why = phrase`on a line of its own`
  // a name that belongs to a group further out
  const columns = [...new Set([column, 0])]
  return columns.map((to) =>
    reading(
      'two-fields',
      [{ span: { start: at, end }, text: eol + ' '.repeat(to) }],
      [end, name.length],
      sentence,
      why,
      second,
    ),
  )
}

/** `{ length: 1190 mm width: 540 mm }` */
function withComma({ start, text }: Line): readonly OtherReading[] {
  const missing = [...text.matchAll(/(?<=[^\s{}[\],:;])(;? +)([A-Za-z_][\w-]*): /g)].filter(({ index }) => {
    const before = text.slice(0, index)
    const from = Math.max(...['{', '}', '[', ']', ','].map((sign) => before.lastIndexOf(sign)))
    return /[{,]/.test(before[from] ?? '') && stillOpen(before) > 0 && before.includes(': ', from)
  })
  const [first] = missing
  if (!first) return []
  const edits = missing.map(({ index, 1: joint = '' }) => ({
    span: { start: start + index, end: start + index + joint.length },
    text: ', ',
  }))
  const [, joint = '', name = ''] = first
  const names = joined(missing.map((one) => one[2]))
  const sentence = phrase`A comma is missing before ${names}: inside { } and [ ] commas separate the fields.`
  const at = first.index + joint.length
  return [reading('comma', edits, [start + at, name.length], sentence, phrase`a comma before it`, text.slice(at))]
}

/** A bracket that is still open where the line ends, or where one around it closes. */
function closed({ start, text, indent }: Line, next: Line | undefined): readonly OtherReading[] {
  const value = withoutComment(text)
  // the # of a comment may be what cut it off
  const isCut = /[}\]]/.test(text.slice(value.length))
  const missing = isCut || /["'#]|[,[{]$/.test(value) || (next && indent < next.indent) ? [] : missingIn(value)
  const at = missing[0]?.at
  if (at === undefined || missing.some((one) => one.at !== at)) return []
  const bracket = missing.map((one) => one.bracket).join('')
  const sentence = phrase`${shortened(value.trim())} lacks its ${bracket}.`
  const blank = value.includes(`${opening[bracket[0]!]} `) ? ' ' : ''
  const why = phrase`closed with ${bracket}`
  const fixed = value.slice(0, at).trimEnd() + blank + bracket
  const edit = { span: { start: start + value.slice(0, at).trimEnd().length, end: start + at }, text: blank + bracket }
  return [
    reading('bracket', [edit], [start + indent, value.trim().length], sentence, why, (fixed + value.slice(at)).trim()),
  ]
}

const opening: Readonly<Record<string, string>> = { '}': '{', ']': '[' }
const closing: Readonly<Record<string, string>> = { '{': '}', '[': ']' }

/** The brackets that a text lacks so that each that it opens is closed; none where one closes nothing. */
function missingIn(text: string): readonly { readonly at: number; readonly bracket: string }[] {
  const open: string[] = []
  const missing: { readonly at: number; readonly bracket: string }[] = []
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]!
    if (closing[sign]) open.push(closing[sign])
    if (!opening[sign]) continue
    if (!open.includes(sign)) return []
    while (open.at(-1) !== sign) missing.push({ at, bracket: open.pop()! })
    open.pop()
  }
  return [...missing, ...open.reverse().map((bracket) => ({ at: text.length, bracket }))]
}

/** `surfaces: 3` above the list that is its value. */
function withoutValue({ start, text, column }: Line, next: Line | undefined): readonly OtherReading[] {
  const [, before, value = ''] = /^( *(?:- +)*[A-Za-z_][\w-]*:)\s*([^\s#|>&*!].*)$/.exec(withoutComment(text)) ?? []
  const isBelow = next && column <= next.indent && /^ *- /.test(next.text)
  if (before === undefined || !isBelow || /[,[{]$/.test(value)) return []
  const name = before.slice(column, -1)
  const [at, end] = [start + before.length, start + text.indexOf(value, before.length) + value.length]
  const sentence = phrase`${name} has both the value ${shortened(value)} and what is indented below it.`
  return [
    reading(
      'value-and-group',
      [{ span: { start: at, end }, text: '' }],
      [start + column, name.length],
      sentence,
      phrase`without ${shortened(value)}`,
      `${name}:`,
    ),
  ]
}

const withoutComment = (text: string) => text.split(' #')[0]!.trimEnd()

const insert = (at: number, text: string): Edit => ({ span: { start: at, end: at }, text })

function reading(
  code: string,
  edits: readonly Edit[],
  [start, length]: readonly [number, number],
  sentence: SyntaxProblem['sentence'] & {},
  why: NonNullable<SyntaxProblem['fix']>['why'],
  text: string,
): OtherReading {
  const fix = { edits, why, certainty: 'guess', text: shortened(text.trim()) } as const
  return { edits, problem: lineProblem(code, sentence, start, length, fix) }
}
