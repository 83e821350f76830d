import { named, phrase } from '../wording/phrase.ts'
import type { Draft, Note, ReadOptions, Task } from './draft.ts'
import { problem } from './draft.ts'
import { kinds } from './kinds.ts'
import { plain } from './plain.ts'
import type { QuantityKind, Reading, SpellingNote } from './quantity.ts'
import { readRange } from './read-range.ts'
import { readMoney } from './read-money.ts'
import { readOne } from './read-one.ts'
import { readPrinted } from './read-printed.ts'
import { readTolerance } from './read-tolerance.ts'
import { withoutExtras } from './without-extras.ts'

export type { ReadOptions } from './draft.ts'

/**
 * Reads a quantity as a datasheet prints it.
 *
 * @param text     the scalar as typed, without quotes
 * @param kind     what the field holds
 * @param options  what a bare number is taken for
 * @returns        the quantity with notes on harmless spellings, or why it is none; never throws
 */
export function readQuantity(text: string, kind: QuantityKind, options: ReadOptions = {}): Reading {
  const key = `${kind} ${options.unit ?? ''} ${options.currency ?? ''} ${text}`
  const reading = known.get(key) ?? readAfresh(text, kind, options)
  if (known.size === mostKnown) known.clear()
  if (text.length <= longest) known.set(key, reading)
  return reading
}

/** The panels of a family share most of their texts, and a record is read again for each correction that is tried. */
const known = new Map<string, Reading>()
const mostKnown = 2000

function readAfresh(text: string, kind: QuantityKind, options: ReadOptions): Reading {
  const printed = readPrinted(text, kind)
  return printed ? { quantity: printed, notes: [] } : readInAnyForm(text, kind, options)
}

/** What `readQuantity` does, for every text. */
export function readInAnyForm(text: string, kind: QuantityKind, options: ReadOptions = {}): Reading {
  const draft = attempt(text, kind, options)
  const reads = (fix: { text: string }) => fix.text !== text && attempt(fix.text, kind, options).quantity !== undefined
  if (draft.problem) {
    const fixes = draft.problem.fixes().map((fix) => ({ ...fix, text: fix.text.trim().replace(/ {2,}/g, ' ') }))
    return { problem: { ...draft.problem, fixes: fixes.filter(reads) } }
  }
  if (draft.notes.length === 0) return { quantity: draft.quantity, notes: [] }
  return { quantity: draft.quantity, notes: draft.notes.map((note) => spellingNote(text, note, draft.notes, reads)) }
}

function attempt(text: string, kind: QuantityKind, options: ReadOptions): Draft {
  if (text.length > longest) return tooLong(text, kind, options)
  const task: Task = { plain: plain(withoutExtras(text, kind)), kind, options }
  if (notGiven.test(task.plain.text)) {
    const length = task.plain.text.length
    const what = text.trim() === '' ? phrase`Nothing is given here` : phrase`"${text.trim()}" says that it is not given`
    return problem(task, 'not-given', 0, length, phrase`${what}: leave the field out, or write ${kinds[kind].example}`)
  }
  const draft = readerOf(kind)(task)
  return draft.problem ? draft : { quantity: draft.quantity, notes: [...draft.notes, ...lookalikes(task)] }
}

/** No quantity of a datasheet takes more characters; a pasted page is not searched for one. */
const longest = 200

function tooLong(text: string, kind: QuantityKind, options: ReadOptions): Draft {
  const task = { plain: plain(text.slice(0, longest)), kind, options }
  const message = phrase`${named(kinds[kind].name)} is expected here, such as ${kinds[kind].example}, and this text has ${text.length} characters`
  return problem(task, 'no-number', 0, task.plain.text.length, message)
}

const notGiven =
  /^\s*(?:(?:[-–]+|\?+|~|\.{2,}|n\.? ?[/.] ?[ad]\.?|n\.?[ad]\.?|t\.?b\.?[acd]\.?|nan|null|none|nil|unknown|not (?:given|stated|known|available|applicable|specified)|x{2,}|(?:-+|\?+|tbd|n\/a) +[a-z%°/]{1,6})\s*)?$/i

function readerOf(kind: QuantityKind): (task: Task) => Draft {
  switch (kind) {
    case 'temperature-range':
      return readRange
    case 'tolerance':
      return readTolerance
    case 'money':
      return readMoney
    default:
      return readOne
  }
}

/** Characters that look right and are not; a dash between two ends of a range is right. */
function lookalikes({ plain: { text, typed, ...plain } }: Task): Note[] {
  const odd = plain.lookalikes.filter((i) => text[i] !== '-' || /^$|[/.~+]\s*$/.test(text.slice(0, i)))
  const runs: [start: number, end: number][] = []
  for (const i of odd) {
    const run = runs.at(-1)
    if (run && run[1] === i) run[1] = i + 1
    else runs.push([i, i + 1])
  }
  return runs.map(([from, to]) => {
    const start = plain.start(from)
    const end = plain.end(to)
    const replacement = text.slice(from, to)
    if (replacement.trim() === '') {
      const message = phrase`${shown(typed.slice(start, end))} was taken for a footnote, so that it does not count`
      return {
        code: 'spelling',
        message,
        start,
        end,
        replacement: '',
        why: phrase`without the footnote`,
        certainty: 'same',
      }
    }
    const message = phrase`${shown(typed.slice(start, end))} was read as "${replacement}"`
    return {
      code: 'spelling',
      message,
      start,
      end,
      replacement,
      why: phrase`plain "${replacement}"`,
      certainty: 'same',
    }
  })
}

function shown(chars: string): string {
  if (chars.length > 1) return `"${chars}"`
  return `"${chars}" (U+${chars.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')})`
}

/** A note's fix makes all harmless fixes at once, so that applying one does not undo another. */
function spellingNote(
  text: string,
  note: Note,
  notes: readonly Note[],
  reads: (fix: { text: string }) => boolean,
): SpellingNote {
  const edits = notes.filter((n) => n === note || n.certainty === 'same').sort((a, b) => b.start - a.start)
  const fixed = edits.reduce((t, e) => t.slice(0, e.start) + e.replacement + t.slice(e.end), text)
  const fix = { text: fixed.trim(), why: note.why, certainty: note.certainty }
  return { code: note.code, message: note.message, start: note.start, end: note.end, fixes: [fix].filter(reads) }
}
