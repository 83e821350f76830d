import { joined, phrase } from '../wording/phrase.ts'
import { strayBrackets } from './line-brackets.ts'
import { reading, withoutComment, type Line, type Surroundings } from './line.ts'
import { stillOpen } from './scan-line.ts'
import type { OtherReading } from './tree.ts'

/** Where a line that once was two may be parted. */
interface Joint {
  /** Offsets in the line: the end of what is before it, and the start of what is behind it. */
  readonly end: number
  readonly start: number
  /** The name that begins there; the whole rest for an item of a list. */
  readonly name: string
  readonly isItem: boolean
  /** Whether only a field that the record knows may be meant. */
  readonly isUnsure: boolean
}

/** `size: { … } weight: 2.2 kg`, `imp: 5.92 A voc: 22.1 V`, `walked_on: falsearrays:`, `surfaces: - id: roof`: lines that became one. */
export function partedLine(line: Line, around: Surroundings): readonly OtherReading[] {
  if (around.prose.has(/^ *(?:- +)*([A-Za-z_][\w-]*):/.exec(line.text)?.[1] ?? '')) return []
  const joints = jointsOf(line.text, around.names)
  const fields = joints.filter(({ isItem }) => !isItem)
  const ways = [...(fields.length > 1 ? [fields] : []), ...joints.map((one) => [one])]
  return ways.flatMap((way) => columnsFor(line, way[0]!, around).map((column) => parted(line, way, column, around.eol)))
}

function jointsOf(text: string, names: ReadonlySet<string>): readonly Joint[] {
  const own = /^ *(?:- +)*[A-Za-z_][\w-]*: ?/.exec(text)?.[0]
  const typed = withoutComment(text)
  const from = own?.length ?? (/^ *- +\{/.test(text) ? text.indexOf('{') : null)
  if (from === null) return []
  return [...typed.matchAll(joint)].flatMap(({ index: start, 1: word }): Joint[] => {
    const end = endBefore(typed, start)
    const before = typed.slice(0, end)
    if (end < from - 1 || stillOpen(before) !== 0 || strayBrackets(typed.slice(start)).length > 0 || isQuoted(before))
      return []
    const isBehindBracket = /[}\]]$/.test(before)
    if (word === undefined) {
      const isItem = typed[start] === '-' || isBehindBracket
      return isItem ? [{ end, start, name: typed.slice(start), isItem, isUnsure: !isBehindBracket }] : []
    }
    const name = isBehindBracket || (end < start && names.has(word)) ? word : known(word, names)
    if (name === undefined) return []
    const at = start + word.length - name.length
    return [{ end: name === word ? end : at, start: at, name, isItem: false, isUnsure: !isBehindBracket }]
  })
}

/** An item, a group in braces, or a name. */
const joint = /(?<=[ \t,;:}\]])- +(?:\{|[A-Za-z_][\w-]*:)|(?<=[ \t,;}\]])(?:\{|([A-Za-z_][\w-]*):(?= |$))/g

/** Without the blanks, and the comma or semicolon, before a place. */
function endBefore(text: string, start: number): number {
  const blanks = text.slice(0, start).trimEnd()
  return /[,;]$/.test(blanks) ? blanks.slice(0, -1).trimEnd().length : blanks.length
}

const isQuoted = (before: string) => /^[^"']*(?:"[^"]*|'[^']*)$/.test(before.replaceAll(/"[^"]*"|'[^']*'/g, ''))

/** The longest name that a word ends with. */
function known(word: string, names: ReadonlySet<string>): string | undefined {
  for (let at = 1; at <= word.length - 3; at++) if (names.has(word.slice(at))) return word.slice(at)
  return undefined
}

/** Where the second line may begin: in the column of the first, where it goes on below, or further out. */
function columnsFor({ column, text }: Line, { end, isItem }: Joint, { next, outer }: Surroundings): readonly number[] {
  const below = next && column < next.indent ? [next.indent, ...(isItem ? [next.indent - 2] : [])] : []
  const isHead = /:\s*$/.test(text.slice(0, end))
  const item = isItem && /^ *- /.test(text) ? [/^ */.exec(text)![0].length] : []
  return [...new Set([...item, ...(isHead ? below : [column, ...below]), ...outer, 0])]
}

function parted({ start, text }: Line, joints: readonly Joint[], column: number, eol: string): OtherReading {
  const edits = joints.map((one) => {
    const dash = one.isItem && text[one.start] !== '-' ? '- ' : ''
    return { span: { start: start + one.end, end: start + one.start }, text: eol + ' '.repeat(column) + dash }
  })
  const [first] = joints as [Joint]
  const names = joined(joints.map(({ name }) => (name.length <= 40 ? name : `${name.slice(0, 37)}...`)))
  const sentence =
    joints.length > 1 ? phrase`${names} need lines of their own.` : phrase`${names} needs a line of its own.`
  const why = joints.length > 1 ? phrase`on lines of their own` : phrase`on a line of its own`
  return {
    ...reading('two-fields', edits, [start + first.start, first.name.length], sentence, why, text.slice(first.start)),
    mustFit: joints.some(({ isUnsure }) => isUnsure),
  }
}
