import { phrase } from '../wording/phrase.ts'
import { insert, reading, withoutComment, type Line, type Surroundings } from './line.ts'
import { shortened } from './shortened.ts'
import type { Edit } from './span.ts'
import type { OtherReading } from './tree.ts'

/** A line whose brackets do not match. */
export const bracketsOf = (line: Line, { next }: Surroundings): readonly OtherReading[] => [
  ...halfRound(line),
  ...closed(line, next),
  ...opened(line),
  ...exchanged(line),
  ...closedEarly(line),
  ...openedTwice(line),
  ...otherKind(line),
  ...quoted(line),
]

/** A bracket that is still open where the line ends, or where one around it closes. */
function closed({ start, text, indent }: Line, next: Line | undefined): readonly OtherReading[] {
  const value = withoutComment(text)
  // the # of a comment may be what cut it off
  const isCut = /[}\]]/.test(text.slice(value.length)) || hasLoneRound(value)
  const missing = isCut || /["'#]|[,[{]$/.test(value) || (next && indent < next.indent) ? [] : missingIn(value)
  const at = missing[0]?.at
  if (at === undefined || missing.some((one) => one.at !== at)) return []
  const bracket = missing.map((one) => one.bracket).join('')
  const sentence = phrase`${shortened(value.trim())} lacks its ${bracket}.`
  const blank = value.includes(`${opening[bracket[0]!]} `) ? ' ' : ''
  const why = phrase`closed with ${bracket}`
  const fixed = value.slice(0, at).trimEnd() + blank + bracket
  const end = start + value.slice(0, at).trimEnd().length
  // in `[5, 6 }` the blank is that of the brace, in `{ a: 5 ]` it is that of the one that lacks
  const edit = { span: { start: end, end: blank === '' ? end : start + at }, text: blank + bracket }
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

/** `size: length: 1190 mm, width: 540 mm }`, `- name: fridge, power: 45 W`: fields on one line without their braces. */
function opened({ start, text, indent }: Line): readonly OtherReading[] {
  const value = withoutComment(text)
  const [, before, fields = ''] =
    /^( *(?:- +)*[A-Za-z_][\w-]*: +)([A-Za-z_][\w-]*: [^{}]*, *[A-Za-z_][\w-]*: .*)$/.exec(value) ??
    /^( *- +)([A-Za-z_][\w-]*: [^{}]*, *[A-Za-z_][\w-]*: .*)$/.exec(value) ??
    []
  if (before === undefined || /["'#]/.test(value)) return []
  const strays = strayBrackets(value)
  const isClosed = strays.length === 1 && strays[0] === value.length - 1 && value.endsWith('}')
  if (strays.length > 0 && !isClosed) return []
  const edits: readonly Edit[] = [
    insert(start + before.length, '{ '),
    ...(isClosed ? [] : [insert(start + value.length, ' }')]),
  ]
  const missing = isClosed ? '{' : '{ }'
  const sentence = phrase`${shortened(value.trim())} lacks its ${missing}.`
  const fixed = `${before}{ ${fields}${isClosed ? '' : ' }'}`
  const place = [start + indent, value.trim().length] as const
  return [{ ...reading('bracket', edits, place, sentence, phrase`in braces`, fixed), mustFit: true }]
}

/** A closing bracket too many, or of the other kind. */
function exchanged({ start, text }: Line): readonly OtherReading[] {
  const value = withoutComment(text)
  const strays = /["'#]/.test(value) ? [] : strayBrackets(value)
  const [at] = strays
  if (at === undefined || strays.length > 1) return []
  const sign = value[at]!
  const other = sign === '}' ? ']' : '}'
  const open = opening[other]!
  const changed = (by: string) => value.slice(0, at) + by + value.slice(at + 1)
  const place = [start + at, 1] as const
  const edit = (by: string) => [{ span: { start: start + at, end: start + at + 1 }, text: by }]
  const spaced = value[at - 1] === ' ' && isBalanced(changed('')) ? 1 : 0
  if (isBalanced(changed(other))) {
    const sentence =
      open === '{'
        ? phrase`A { is still open before ${sign}: close it with } where the fields inside it end.`
        : phrase`A [ is still open before ${sign}: close it with ] where the list ends.`
    return [reading('bracket', edit(other), place, sentence, phrase`closed with ${other}`, changed(other))]
  }
  if (!isBalanced(changed(''))) return []
  const lacking = unopened({ start, value, at })
  const sentence = phrase`${sign} closes a bracket that was never opened: take it out, or open it.`
  const edits = [{ span: { start: start + at - spaced, end: start + at + 1 }, text: '' }]
  return [reading('bracket', edits, place, sentence, phrase`without ${sign}`, changed('')), ...lacking]
}

/** `output: { years: 5, at_least: 80 % }]`, `output: [years: 5, at_least: 80 % }]`: the bracket that a later one closes. */
function unopened(line: {
  readonly start: number
  readonly value: string
  readonly at: number
}): readonly OtherReading[] {
  const { start, value, at } = line
  const [before = ''] = /^ *(?:- +)*(?:[A-Za-z_][\w-]*: +)?/.exec(value) ?? []
  const [inside = ''] = /^[[{ ]*/.exec(value.slice(before.length)) ?? []
  const fields = [...value.slice(0, at).matchAll(/(?<=[{,] ?)[A-Za-z_][\w-]*: /g)].map(
    (one) => one.index + one[0].length,
  )
  const open = opening[value[at]!]!
  return [...new Set([before.length, before.length + inside.length, ...fields])].flatMap((place) => {
    const blank = open === '{' ? ' ' : ''
    const fixed = value.slice(0, place) + open + blank + value.slice(place)
    if (!isBalanced(fixed)) return []
    const sentence = phrase`${shortened(value.trim())} lacks its ${open}.`
    const span = [start + before.length, value.length - before.length] as const
    const edits = [insert(start + place, open + blank)]
    return [{ ...reading('bracket', edits, span, sentence, phrase`opened with ${open}`, fixed), mustFit: true }]
  })
}

const hasLoneRound = (value: string) => value.split('(').length !== value.split(')').length

/** `size: { length: 1190 mm, width: 540 mm )`, `size: ( length: 1190 mm, width: 540 mm }` */
function halfRound({ start, text }: Line): readonly OtherReading[] {
  const value = withoutComment(text)
  const signs = [...value.matchAll(/[()]/g)]
  if (/["'#]/.test(value) || isBalanced(value) || signs.length > 4) return []
  return signs.flatMap(({ index, 0: sign }) =>
    (sign === '(' ? ['{', '['] : ['}', ']']).flatMap((by) => {
      const fixed = value.slice(0, index) + by + value.slice(index + 1)
      if (!isBalanced(fixed)) return []
      const edits = [{ span: { start: start + index, end: start + index + 1 }, text: by }]
      const sentence = phrase`${by} belongs here, not ${sign}.`
      return [
        { ...reading('bracket', edits, [start + index, 1], sentence, phrase`another bracket`, fixed), mustFit: true },
      ]
    }),
  )
}

/** `size: { length: 1190 mm }, width: 540 mm }`: a bracket that closes before the last fields. */
function closedEarly({ start, text }: Line): readonly OtherReading[] {
  const value = withoutComment(text)
  if (/["'#]/.test(value) || strayBrackets(value).length !== 1) return []
  return [...value.matchAll(/ ?([}\]])(?=[ ,]*([A-Za-z_][\w-]*):)/g)].flatMap(
    ({ index, 0: typed, 1: sign, 2: name }) => {
      const fixed = value.slice(0, index) + value.slice(index + typed.length)
      if (!isBalanced(fixed)) return []
      const end = start + index + typed.length
      const sentence = phrase`${sign} closes too early: ${name} is inside, too. Take it out.`
      const edits = [{ span: { start: start + index, end }, text: '' }]
      return [{ ...reading('bracket', edits, [end - 1, 1], sentence, phrase`without ${sign}`, fixed), mustFit: true }]
    },
  )
}

const isBalanced = (text: string) => strayBrackets(text).length === 0 && missingIn(text).length === 0

/** Where brackets close what is not open. */
export function strayBrackets(text: string): readonly number[] {
  const open: string[] = []
  const strays: number[] = []
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]!
    if (closing[sign]) open.push(closing[sign])
    else if (!opening[sign]) continue
    else if (open.at(-1) === sign) open.pop()
    else strays.push(at)
  }
  return strays
}

/** `size: { length: 1190 mm, { width: 540 mm }`: a bracket that opens before the last fields. */
function openedTwice({ start, text }: Line): readonly OtherReading[] {
  const value = withoutComment(text)
  if (/["'#]/.test(value) || missingIn(value).length !== 1) return []
  return [...value.matchAll(/(?<=[{[,] ?)([{[]) *(?=[A-Za-z_][\w-]*:)/g)].flatMap(({ index, 0: typed, 1: sign }) => {
    const fixed = value.slice(0, index) + value.slice(index + typed.length)
    if (!isBalanced(fixed)) return []
    const at = start + index
    const sentence = phrase`${sign} opens a second group inside the first: take it out.`
    const edits = [{ span: { start: at, end: at + typed.length }, text: '' }]
    return [{ ...reading('bracket', edits, [at, 1], sentence, phrase`without ${sign}`, fixed), mustFit: true }]
  })
}

/** `size: ( length: 1190 mm, width: 540 mm )`, `size: [ length: 1190 mm, width: 540 mm ]` */
function otherKind({ start, text }: Line): readonly OtherReading[] {
  const value = withoutComment(text)
  const [, before, sign] =
    /^( *(?:- +)*(?:[A-Za-z_][\w-]*: +)?)([([]) *[A-Za-z_][\w-]*: [^(){}[\]"'#]*[)\]]$/.exec(value) ?? []
  if (before === undefined || value.at(-1) !== (sign === '(' ? ')' : ']')) return []
  const [at, end] = [before.length, value.length - 1]
  const edits = [
    { span: { start: start + at, end: start + at + 1 }, text: '{' },
    { span: { start: start + end, end: start + end + 1 }, text: '}' },
  ]
  const sentence =
    sign === '(' ? phrase`Fields on one line go in { }, not in ( ).` : phrase`Fields on one line go in { }, not in [ ].`
  const fixed = `${value.slice(0, at)}{${value.slice(at + 1, end)}}`
  const place = [start + at, value.length - at] as const
  return [{ ...reading('bracket', edits, place, sentence, phrase`in braces`, fixed), mustFit: true }]
}

/** `size: "{ length: 1190 mm, width: 540 mm }`: a quote that is not closed before a group. */
function quoted({ start, text }: Line): readonly OtherReading[] {
  const value = withoutComment(text)
  const [, before, rest = ''] = /^( *(?:- +)*(?:[A-Za-z_][\w-]*: +)?)["']([{[][^"']*[}\]])$/.exec(value) ?? []
  if (before === undefined) return []
  const at = start + before.length
  const edits = [{ span: { start: at, end: at + 1 }, text: '' }]
  const sentence = phrase`The quote before ${shortened(rest)} is not closed on its line: take it out.`
  return [{ ...reading('open-quote', edits, [at, 1], sentence, phrase`without the quote`, rest), mustFit: true }]
}
