import { phrase } from '../wording/phrase.ts'
import type { Draft, Note, Task } from './draft.ts'
import { guess, problem, replaced, same } from './draft.ts'
import { kinds } from './kinds.ts'
import { bare, measure } from './measure.ts'
import { numberNote, numberProblem, readOver, spelling } from './notes.ts'
import type { Scanned } from './number.ts'
import { disambiguated, isBeyond, scanNumber } from './number.ts'
import { readCompound } from './read-compound.ts'
import { readGauge } from './read-gauge.ts'
import { looksLikeDigits } from './misread.ts'
import { readPair } from './read-pair.ts'
import { trailing, unreadUnit } from './unread-unit.ts'
import { unitOfKind } from './unit-text.ts'

const lead =
  /\s*(?:(~|approx(?:\.|imately)?|about|circa|ca\.?|[<>]=?|[=≥≤]|max\.?|min\.?|typ\.?|nom\.?|up to)(?![A-Za-z])\s*)?/iy
const signs = /(?:[-+±]+ ?(?=[-+±.\d,/])(?:\/[-+] ?)?)?/y
const fractional = new Set(['length', 'mass', 'duration'])

/** One number with its unit behind it, feet and inches, or a wire gauge. */
export function readOne(task: Task): Draft {
  const special = task.kind === 'area' ? readGauge(task) : readCompound(task)
  if (special) return special
  const { notes, end } = readLead(task)
  const scanned = readNumber(task, end)
  if ('problem' in scanned) return scanned
  const { text } = task.plain
  const rest = text.slice(scanned.end)
  const found = trailing(rest, (unit) => unit.trim() === '' || unitOfKind(unit, task.kind) !== null)
  if (!found) return readPair(task, readOne) ?? unreadUnit(task, scanned)

  const to = scanned.end + found.unit.trimEnd().length
  const extra = found.extra ? [readOver(task, text.indexOf(found.extra, to), found.extra)] : []
  const unit = unitOfKind(found.unit, task.kind)
  const number = disambiguated(scanned, unit?.symbol ?? '')
  if (number.ambiguous) return numberProblem(task, number)
  const all = [...notes, ...numberNote(task, number), ...extra]
  if (found.unit.trim() === '' || !unit) return bare(task, all, number)
  const from = number.end + (rest.length - rest.trimStart().length)
  const nearly = unit.nearly ? [nearlyNote(task, from, to, unit.symbol)] : []
  return measure(task, [...all, ...nearly], number, unit, false)
}

/** Reads over `approx.` and the like, with a note. `end` is where the number should begin. */
export function readLead(task: Task): { notes: Note[]; end: number } {
  lead.lastIndex = 0
  const match = lead.exec(task.plain.text)
  const word = match?.[1]
  const notes = word ? [readOver(task, task.plain.text.indexOf(word), word)] : []
  return { notes, end: match?.[0].length ?? 0 }
}

/** A number with at most one sign that touches it. */
export function readNumber(task: Task, at: number): Scanned | Extract<Draft, { problem: object }> {
  const { text } = task.plain
  signs.lastIndex = at
  const sign = signs.exec(text)?.[0] ?? ''
  const number = scanNumber(text, at + sign.length, fractional.has(task.kind))
  if (!number) return noNumber(task, at)
  if (sign.length > 1 || sign === '±') return misplaced(task, at, number, sign)
  return sign === '-' ? { ...number, value: -number.value } : number
}

/** `typed` is a unit in other letters than it has. */
export function nearlyNote(task: Task, start: number, end: number, symbol: string): Note {
  const typed = task.plain.text.slice(start, end).trim()
  const message = phrase`"${typed}" was read as ${symbol}`
  return spelling(task, {
    start,
    end: start + typed.length,
    replacement: symbol,
    message,
    why: phrase`the unit is ${symbol}`,
  })
}

function misplaced(task: Task, start: number, number: Scanned, sign: string) {
  const { plain } = task
  const one = sign.trim()
  if (one === '-' || one === '+') {
    const message = phrase`The sign and the number must touch: write ${one}${number.plain}`
    const fix = same(replaced(task, start, number.start, one), phrase`without the space after the sign`)
    return problem(task, 'misplaced-sign', start, number.end, message, () => [fix])
  }
  const shown = plain.typed.slice(plain.start(start), plain.end(number.start)).trim()
  const fix = guess(replaced(task, start, number.start, /^[- ]+$/.test(sign) ? '-' : ''), phrase`one sign`)
  return problem(
    task,
    'misplaced-sign',
    start,
    number.end,
    phrase`"${shown}" is more signs than one number takes`,
    () => [fix],
  )
}

function noNumber(task: Task, at: number) {
  const { text, typed } = task.plain
  const { name, example } = kinds[task.kind]
  const from = text.slice(at).search(/[-+]?\.?\d/)
  const number = /^[-+]?\.?\d[\d.]*(?:e[-+]?\d+)?/i.exec(text.slice(at).trimStart())?.[0] ?? ''
  // 22.1.1 is no number at all
  const message =
    isBeyond(Number(number)) && !Number.isNaN(Number(number))
      ? phrase`${number} is beyond any number of a record; ${name} is expected, such as ${example}`
      : phrase`No number is read in "${typed.trim()}"; ${name} is expected, such as ${example}`
  // the 2 of C/2 is no number of its own
  const isApart = from > 0 && !/[A-Za-z/]$/.test(text.slice(at, at + from))
  const behind = () => typed.slice(task.plain.start(at + from)).replace(/\)\s*$/, '')
  return problem(task, 'no-number', 0, text.length, message, () =>
    from > 0
      ? (looksLikeDigits(typed) ?? (isApart ? [guess(behind(), phrase`only the number and its unit`)] : []))
      : (looksLikeDigits(typed) ?? []),
  )
}
