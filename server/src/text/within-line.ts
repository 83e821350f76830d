import { joined, phrase } from '../wording/phrase.ts'
import { bracketsOf } from './line-brackets.ts'
import { joinedLine } from './joined-line.ts'
import { dashesOf } from './line-dashes.ts'
import { reading, withoutComment, type Line, type Surroundings } from './line.ts'
import { colonsWithin, ownColon } from './own-colon.ts'
import { partedLine } from './parted-line.ts'
import { stillOpen } from './scan-line.ts'
import { shortened } from './shortened.ts'
import type { OtherReading } from './tree.ts'

/** The readings to try of a line that is itself mistyped, likeliest first. */
export const readingsWithin = (line: Line, around: Surroundings): readonly OtherReading[] =>
  line.text.length > longest
    ? []
    : [
        ...dashesOf(line, around),
        ...withComma(line, around),
        ...withoutComma(line),
        ...withoutSign(line, around),
        ...oneColon(line),
        ...partedLine(line, around),
        ...bracketsOf(line, around),
        ...joinedLine(line, around),
        ...withoutColon(line, around),
        ...colonsWithin(line, around),
        ...withoutDocument(line, around),
        ...withoutValue(line, around.next),
      ]

/** Of a line with several fields whose separators are mistyped, or whose brackets are those of a list. */
export const readingsOfFields = (line: Line, around: Surroundings): readonly OtherReading[] =>
  line.text.length > longest
    ? []
    : [
        ...withComma(line, around),
        ...partedLine(line, around),
        ...bracketsOf(line, around),
        ...ownColon(line, around),
        ...colonsWithin(line, around),
      ]

/** No line of a record has more characters. */
const longest = 500

/** `{ length: 1190 mm width: 540 mm }`; of a name that the record knows also `{ length: 1190 mm width:540 mm }` */
function withComma({ start, text }: Line, { names }: Surroundings): readonly OtherReading[] {
  const missing = [...text.matchAll(unseparated)].filter(({ index, 2: name = '', 3: joint = '' }) => {
    const before = text.slice(0, index)
    const from = Math.max(...['{', '}', '[', ']', ','].map((sign) => before.lastIndexOf(sign)))
    const isInside = /[{,]/.test(before[from] ?? '') && stillOpen(before) > 0 && /[:=]/.test(before.slice(from))
    return isInside && (joint === ': ' || names.has(name))
  })
  const [first] = missing
  if (!first) return []
  const edits = missing.flatMap(({ index, 1: before = '', 2: { length } = '', 3: joint = '' }) => {
    const [at, colon] = [start + index, start + index + before.length + length]
    return [
      { span: { start: at, end: at + before.length }, text: ', ' },
      ...(joint === ': ' ? [] : [{ span: { start: colon, end: colon + joint.length }, text: ': ' }]),
    ]
  })
  const [, before = '', name = ''] = first
  const list = joined(missing.map((one) => one[2]))
  const sentence = phrase`A comma is missing before ${list}: inside { } and [ ] commas separate the fields.`
  const at = first.index + before.length
  const fixed = reading('comma', edits, [start + at, name.length], sentence, phrase`a comma before it`, text.slice(at))
  return [missing.every((one) => one[3] === ': ') ? fixed : { ...fixed, mustFit: true }]
}

const unseparated = /(?<=[^\s{}[\],:;])(;? +|;)([A-Za-z_][\w-]*)(: ?| *[:=] *| +(?=[-+±]?\.?\d))/g

/** `{ length: 1190 mm,, width: 540 mm }`, `{ , length: 1190 mm }` */
function withoutComma({ start, text }: Line): readonly OtherReading[] {
  const typed = withoutComment(text)
  const found = /(?<=[{[,]) *,(?! *$)/.exec(typed)
  if (!found || /["']/.test(typed)) return []
  const end = found.index + found[0].length
  const edits = [{ span: { start: start + found.index, end: start + end }, text: '' }]
  const sentence = phrase`A comma is here with nothing in front of it: take one out.`
  const fixed = text.slice(0, found.index) + text.slice(end)
  return [reading('comma', edits, [start + end - 1, 1], sentence, phrase`without the comma`, fixed)]
}

/** `surfaces: 3` above the list that is its value. */
function withoutValue({ start, text, column }: Line, next: Line | undefined): readonly OtherReading[] {
  const [, before, value = ''] = /^( *(?:- +)*[A-Za-z_][\w-]*:)\s*([^\s#|>&*!].*)$/.exec(withoutComment(text)) ?? []
  const isBelow = next && column <= next.indent && /^ *- /.test(next.text)
  if (before === undefined || !isBelow || /^- |[,[{]$/.test(value)) return []
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

/** `*arrays:`, `"format: 1` */
function withoutSign({ start, text, column }: Line, { names }: Surroundings): readonly OtherReading[] {
  const [, sign = '', blank = '', name = ''] =
    /^ *(?:- +)*([*&!"'`@%|>:,.?=+~]{1,2})( ?)([A-Za-z_][\w-]*):(?: |$)/.exec(text) ?? []
  if (!names.has(name) || (sign !== ':' && text.includes(sign, column + sign.length))) return []
  const at = start + column
  const edits = [{ span: { start: at, end: at + sign.length + blank.length }, text: '' }]
  const sentence = phrase`${sign} in front of ${name} is not part of the name: take it out.`
  const fixed = text.slice(column + sign.length + blank.length)
  return [{ ...reading('sign', edits, [at, sign.length], sentence, phrase`without ${sign}`, fixed), mustFit: true }]
}

/** `voc: : 22.1 V` */
function oneColon({ start, text, column }: Line): readonly OtherReading[] {
  const [, before] = /^( *(?:- +)*[A-Za-z_][\w-]*:)(?: *:)+ /.exec(text) ?? []
  if (before === undefined) return []
  const end = /^[ :]*:/.exec(text.slice(before.length))![0].length + before.length
  const sentence = phrase`Two colons follow ${before.slice(column, -1)}: take one out.`
  const edits = [{ span: { start: start + before.length, end: start + end }, text: '' }]
  const fixed = text.slice(column, before.length) + text.slice(end)
  return [reading('sign', edits, [start + end - 1, 1], sentence, phrase`one colon`, fixed)]
}

/** `surfaces` above the list that is its value. */
function withoutColon({ start, text, indent, column }: Line, { next, names }: Surroundings): readonly OtherReading[] {
  const [, before, name = '', sign = ''] =
    /^( *(?:- +)*)([A-Za-z_][\w-]*)[ \t]*([;.,=]?)$/.exec(withoutComment(text)) ?? []
  if (before === undefined || !names.has(name) || !next) return []
  if (next.indent < column || (next.indent === indent && !/^ *- /.test(next.text))) return []
  const at = start + column + name.length
  const end = sign === '' ? at : start + text.indexOf(sign, column + name.length) + 1
  const sentence = phrase`The colon after ${name} is missing: write ${name}: above what is indented below it.`
  const edits = [{ span: { start: at, end }, text: ':' }]
  const why = phrase`a colon after the name`
  return [{ ...reading('no-colon', edits, [start + column, name.length], sentence, why, `${name}:`), mustFit: true }]
}

/** `---` where no other record begins. */
function withoutDocument({ start, text }: Line, { eol, above, next }: Surroundings): readonly OtherReading[] {
  const sign = /^(?:---|[.]{3})(?=\s*$)/.exec(text)?.[0]
  if (sign === undefined || !above || !next) return []
  const edits = [{ span: { start, end: start + text.length + eol.length }, text: '' }]
  const sentence = phrase`${sign} ends the record here, and the lines below it are not read: take it out.`
  const why = phrase`without ${sign}`
  return [{ ...reading('second-document', edits, [start, sign.length], sentence, why, ''), mustFit: true }]
}
