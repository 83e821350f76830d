import { phrase } from '../wording/phrase.ts'
import { reading, withoutComment, type Line, type Surroundings } from './line.ts'
import { shortened } from './shortened.ts'
import type { OtherReading } from './tree.ts'

/** A line whose dash is mistyped, lost, or too many. */
export const dashesOf = (line: Line, around: Surroundings): readonly OtherReading[] => [
  ...apart(line, around),
  ...apartFromText(line, around),
  ...otherSign(line),
  ...twoDashes(line),
  ...lost(line, around),
  ...strayDash(line),
]

/** `-id: bimini`, also where the line lost its indentation. */
function apart({ start, text, indent }: Line, around: Surroundings): readonly OtherReading[] {
  const [, before, name] = /^( *-)([A-Za-z_][\w-]*): /.exec(text) ?? []
  if (before === undefined) return []
  const sentence = phrase`A space is missing after the dash before ${name}.`
  const why = phrase`a space after the dash`
  const fixed = `- ${text.slice(before.length)}`
  const place = [start + indent, text.trim().length] as const
  const columns = [...new Set([indent, ...columnsOfItem(around)])]
  return columns.map((column) => {
    const edit =
      column < indent
        ? { span: { start, end: start + before.length }, text: ' '.repeat(column) + '- ' }
        : { span: { start: start + indent, end: start + before.length }, text: ' '.repeat(column - indent) + '- ' }
    const near = { span: { start: start + before.length, end: start + before.length }, text: ' ' }
    return reading('item', [column === indent ? near : edit], place, sentence, why, fixed)
  })
}

/** `-IEC 61730` beside items of one text each. */
function apartFromText({ start, text, indent }: Line, { above, next }: Surroundings): readonly OtherReading[] {
  const [, words] = /^ *-([^\s\d-].*)$/.exec(withoutComment(text)) ?? []
  const isBeside = [above, next].some((one) => one?.indent === indent && /^ *- /.test(one.text))
  if (words === undefined || !isBeside || /:(?: |$)/.test(words)) return []
  const sentence = phrase`A space is missing after the dash before ${shortened(words)}.`
  const at = start + indent + 1
  const edits = [{ span: { start: at, end: at }, text: ' ' }]
  return [reading('item', edits, [at - 1, words.length + 1], sentence, phrase`a space after the dash`, `- ${words}`)]
}

/** Where the dash of an item may be whose other fields are below it. */
const columnsOfItem = ({ next }: Surroundings): readonly number[] => (next && 2 <= next.indent ? [next.indent - 2] : [])

/** `* id: bimini`, `– id: bimini` */
function otherSign({ start, text, indent }: Line): readonly OtherReading[] {
  const [, sign] = /^ *([*+\u2010-\u2015\u2022\u2212]) (?=\{|[A-Za-z_][\w-]*: )/.exec(text) ?? []
  if (sign === undefined) return []
  const edits = [{ span: { start: start + indent, end: start + indent + 1 }, text: '-' }]
  const sentence = phrase`An item of a list begins with a hyphen (-), not with ${sign}.`
  return [reading('item', edits, [start + indent, 1], sentence, phrase`a hyphen`, `-${text.slice(indent + 1)}`)]
}

/** `- - id: bimini` */
function twoDashes({ start, text, indent }: Line): readonly OtherReading[] {
  const [, second] = /^ *- (- +)(?=[A-Za-z_][\w-]*: )/.exec(text) ?? []
  if (second === undefined) return []
  const at = start + indent + 2
  const edits = [{ span: { start: at, end: at + second.length }, text: '' }]
  const sentence = phrase`Two dashes make a list inside the list: take one out.`
  const fixed = `- ${text.slice(indent + 2 + second.length)}`
  return [{ ...reading('item', edits, [start + indent, 3], sentence, phrase`one dash`, fixed), mustFit: true }]
}

/** `id: bimini` at the left margin, above the other fields of its item. */
function lost({ start, text, indent }: Line, around: Surroundings): readonly OtherReading[] {
  const words = withoutComment(text).trim()
  if (!/^[A-Za-z_][\w-]*: \S/.test(words)) return []
  return columnsOfItem(around)
    .filter((column) => indent <= column)
    .map((column) => {
      const edits = [{ span: { start, end: start + indent }, text: ' '.repeat(column) + '- ' }]
      const sentence = phrase`${shortened(words)} is in a list without the dash that begins an item.`
      const place = [start + indent, words.length] as const
      return { ...reading('item', edits, place, sentence, phrase`a dash before it`, `- ${words}`), mustFit: true }
    })
}

/** `- voc: 22.1 V` among the fields of a group. */
function strayDash({ start, text, indent }: Line): readonly OtherReading[] {
  const [, dash, name] = /^ *(- +)([A-Za-z_][\w-]*):(?: |$)/.exec(text) ?? []
  if (dash === undefined) return []
  const at = start + indent
  const sentence = phrase`${name} is a field of its group, not an item of a list: take out its dash.`
  const ways = [
    { span: { start: at, end: at + dash.length }, text: '' },
    { span: { start: at, end: at + 1 }, text: '' },
  ]
  return ways.map((edit) => ({
    ...reading(
      'item',
      [edit],
      [at, text.trim().length],
      sentence,
      phrase`without the dash`,
      text.slice(indent + dash.length),
    ),
    mustFit: true,
  }))
}
