import { strayBrackets } from './line-brackets.ts'
import { withoutComment } from './line.ts'
import { stillOpen } from './scan-line.ts'
import type { Edit } from './span.ts'

/** Where a line that once was two may be parted; offsets are those of the line. */
export interface Joint {
  /** The end of what is before it, and the start of what is behind it. */
  readonly end: number
  readonly start: number
  /** The name that begins there; the whole rest for an item of a list. */
  readonly name: string
  readonly isItem: boolean
  /** Whether only a field that the record knows may be meant. */
  readonly isUnsure: boolean
  /** What makes a colon and a space of what is behind the name, where they are not there. */
  readonly colon?: Edit
}

/** Where a line may be parted, and its own colon where that is mistyped; none where it is no field and no item. */
export interface Joints {
  readonly own: readonly Edit[]
  readonly joints: readonly Joint[]
}

export function jointsIn(text: string, names: ReadonlySet<string>): Joints {
  const typed = withoutComment(text)
  const first = firstField(typed, names)
  if (!first) return { own: [], joints: [] }
  const found = [...items(typed), ...fields(typed, names)].filter(({ end, start }) => {
    const before = typed.slice(0, end)
    return (
      first.end - 1 <= end &&
      stillOpen(before) === 0 &&
      strayBrackets(typed.slice(start)).length === 0 &&
      !isQuoted(before)
    )
  })
  return { own: first.own, joints: found.sort((a, b) => a.start - b.start) }
}

/** The name that a line begins with, or its first brace, and where that ends. */
function firstField(text: string, names: ReadonlySet<string>): { readonly end: number; readonly own: Edit[] } | null {
  const plain = /^ *(?:- +)*[A-Za-z_][\w-]*:(?: |$|(?=- ))/.exec(text)?.[0]
  if (plain !== undefined) return { end: plain.length, own: [] }
  if (/^ *- +\{/.test(text)) return { end: text.indexOf('{'), own: [] }
  const [all, before = '', name = '', joint = ''] =
    /^( *(?:- +)*)([A-Za-z_][\w-]*)(:| *[:=] *| +(?=[-+±]?\.?\d))(?=[^\s/])/.exec(text) ?? []
  if (all === undefined || !names.has(name)) return null
  return { end: all.length, own: [colonAt(before.length + name.length, joint)] }
}

const colonAt = (start: number, joint: string): Edit => ({
  span: { start, end: start + joint.length },
  text: ': ',
})

/** `- id: roof`, `- { name: fridge }`, and a brace that follows one. */
function items(text: string): readonly Joint[] {
  return [...text.matchAll(/(?<=[ \t,;:}\]%])- +(?:\{|[A-Za-z_][\w-]*:)|(?<=[ \t,;}\]])\{/g)].flatMap(
    ({ index: start }) => {
      const end = endBefore(text, start, /[,;]$/)
      const isBehindBracket = /[}\]]$/.test(text.slice(0, end))
      const isItem = text[start] === '-' || isBehindBracket
      return isItem ? [{ end, start, name: text.slice(start), isItem, isUnsure: !isBehindBracket }] : []
    },
  )
}

/** `voc: 22.1 V`; of a name that the record knows also `voc:22.1 V`, `voc : 22.1 V`, `voc = 22.1 V` and `voc 22.1 V`. */
const field = /(?<=[ \t,;}\]%°:\d])([A-Za-z_][\w-]*)(:(?= |$)|: *| *[:=] *| +(?=[-+±]?\.?\d))(?!\/)/g

function fields(text: string, names: ReadonlySet<string>): readonly Joint[] {
  return [...text.matchAll(field)].flatMap(({ index: start, 1: word = '', 2: joint = '' }): Joint[] => {
    const isPlain = joint === ':' && /^(?: |$)/.test(text.slice(start + word.length + 1))
    const end = endBefore(text, start, /(?:[,;]|\s(?:[/|&+\u2013-]|and))$/)
    const isBehindBracket = /[}\]]$/.test(text.slice(0, end))
    const isGlued = /[%:\d]/.test(text[start - 1] ?? '')
    if (!isPlain || isGlued) {
      const colon = isPlain ? {} : { colon: colonAt(start + word.length, joint) }
      return names.has(word) ? [{ end, start, name: word, isItem: false, isUnsure: true, ...colon }] : []
    }
    const name = isBehindBracket || (end < start && names.has(word)) ? word : known(word, names)
    if (name === undefined) return []
    const at = start + word.length - name.length
    return [{ end: name === word ? end : at, start: at, name, isItem: false, isUnsure: !isBehindBracket }]
  })
}

/** Without the blanks, and one of the signs, before a place. */
function endBefore(text: string, start: number, sign: RegExp): number {
  const blanks = text.slice(0, start).trimEnd()
  const typed = sign.exec(blanks)?.[0] ?? ''
  return blanks.slice(0, blanks.length - typed.length).trimEnd().length
}

const isQuoted = (before: string) => /^[^"']*(?:"[^"]*|'[^']*)$/.test(before.replaceAll(/"[^"]*"|'[^']*'/g, ''))

/** The longest name that a word ends with. */
function known(word: string, names: ReadonlySet<string>): string | undefined {
  for (let at = 1; at <= word.length - 3; at++) if (names.has(word.slice(at))) return word.slice(at)
  return undefined
}
