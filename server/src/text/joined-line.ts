import { phrase } from '../wording/phrase.ts'
import { reading, withoutComment, type Line, type Surroundings } from './line.ts'
import { stillOpen } from './scan-line.ts'
import { shortened } from './shortened.ts'
import type { OtherReading } from './tree.ts'

/** A line break in the middle of a line: a value that goes on in the next line, or begins there; a name that is cut. */
export const joinedLine = (line: Line, around: Surroundings): readonly OtherReading[] => [
  ...cutValue(line, around),
  ...cutName(line, around),
]

/** `voc: 22.1` and `V`, `cable: { size: 6` and `mm2 }` */
function cutValue({ start, text }: Line, { next }: Surroundings): readonly OtherReading[] {
  const [, typed] = /^ *(?:- +)*[A-Za-z_][\w-]*:(?: (.*))?$/.exec(text) ?? /^ *- +(\{.*)$/.exec(text) ?? []
  const value = typed?.trim() || undefined
  const words = next?.text.trim() ?? ''
  if (!next || (value === undefined && !/:\s*$/.test(text)) || / #/.test(text)) return []
  if (!isRest(value, withoutComment(words)) && !(value !== undefined && closes(value, words))) return []
  const end = start + text.trimEnd().length
  const blank = /[°/.±(]$/.test(value ?? '') ? '' : ' '
  const edits = [{ span: { start: end, end: next.start + next.indent }, text: blank }]
  const sentence = phrase`${shortened(words)} belongs to the value of the line above.`
  const place = [next.start + next.indent, words.length] as const
  const fixed = value ? value + blank + words : words
  return [{ ...reading('joined', edits, place, sentence, phrase`in the line above`, fixed), mustFit: true }]
}

/** A bracket of the line above, in the middle of whose value a new line begins. */
const closes = (value: string, words: string) =>
  0 < stillOpen(value) && stillOpen(value + words) === 0 && !/[,[{]$/.test(value) && !/["'#]/.test(value + words)

/** `stc` and `:`, `temperature_` and `coefficients:` */
function cutName({ start, text, column }: Line, { next, names }: Surroundings): readonly OtherReading[] {
  const [, first] = /^ *(?:- +)*([A-Za-z_][\w-]*) *$/.exec(text) ?? []
  const [, rest] = /^ *([\w-]*):(?: |$)/.exec(next?.text ?? '') ?? []
  if (!next || first === undefined || rest === undefined || !names.has(first + rest)) return []
  const end = start + text.trimEnd().length
  const edits = [{ span: { start: end, end: next.start + next.indent }, text: '' }]
  const name = first + rest
  const sentence = phrase`A line break splits the name ${name}: take it out.`
  const place = [start + column, first.length] as const
  return [{ ...reading('joined', edits, place, sentence, phrase`in one line`, `${name}:`), mustFit: true }]
}

function isRest(value: string | undefined, words: string): boolean {
  if (value === undefined && /^[{[].*[\]}]$/.test(words)) return stillOpen(words) === 0
  if (!/^[^\s#{}[\]"'&*!|>-]/.test(words) || /:(?:\s|$)| #/.test(words)) return false
  if (value === undefined) return true
  if (/^[{["'|>]/.test(value)) return false
  return /^[-+±/.\d\s]+$/.test(value) ? /^[^\s\d]{1,8}$/.test(words) : /[,;]$/.test(value) && /\s/.test(value)
}
