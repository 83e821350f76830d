import { isPlainSign, currencySigns } from './currencies.ts'
import type { Draft, Note, Task } from './draft.ts'
import { guess, problem, replaced, same } from './draft.ts'
import { gaugeArea, gaugeNumber } from './gauge.ts'
import { kinds } from './kinds.ts'
import { numberNote, numberProblem, spelling } from './notes.ts'
import type { Scanned } from './number.ts'
import { scanNumber } from './number.ts'
import { readCompound } from './read-compound.ts'
import { bare, measure, usualUnit } from './measure.ts'
import { trailing, unreadUnit } from './unread-unit.ts'
import { unitOfKind } from './unit-text.ts'

const prefix =
  /\s*(?:(~|approx(?:\.|imately)?|about|circa|ca\.?|>=|<=|≥|≤|>|<|=|max\.?|min\.?|typ\.?|nom\.?|up to)\s*(?=[-+.\d$€£¥A-Z]))?/iy
const signs = /(?:[-+±]+ ?(?=[-+±.\d,/])(?:\/[-+] ?)?)?/y

/** One number with its unit, a currency before or behind it, or a wire gauge. */
export function readOne(task: Task): Draft {
  const { text } = task.plain
  const special = task.kind === 'area' ? readGauge(task) : readCompound(task)
  if (special) return special

  const notes: Note[] = []
  let at = lead(task, notes)
  const money = task.kind === 'money' ? moneyBefore(text, at) : null
  if (money) at = money.end
  const signStart = at
  signs.lastIndex = at
  const sign = signs.exec(text)?.[0] ?? ''
  at += sign.length
  const number = scanNumber(text, at, fractional.has(task.kind))
  if (!number) return noNumber(task, signStart)
  if (sign.length > 1 || sign === '±') return misplaced(task, signStart, number, sign)
  const value = (sign === '-' ? -1 : 1) * number.value
  return withUnit(task, notes, { ...number, value }, money)
}

const fractional = new Set(['length', 'mass', 'duration'])

/** Reads over `approx.` and the like, with a note. Returns where the number should begin. */
function lead(task: Task, notes: Note[]): number {
  prefix.lastIndex = 0
  const match = prefix.exec(task.plain.text)
  const end = match?.[0].length ?? 0
  const word = match?.[1]
  if (word) {
    const start = task.plain.text.indexOf(word)
    notes.push(
      spelling(
        task,
        start,
        end,
        '',
        `"${word}" was read over; the number counts as it stands`,
        `without "${word}"`,
        'guess',
      ),
    )
  }
  return end
}

/** The number is known; what stands behind it decides. */
function withUnit(
  task: Task,
  notes: Note[],
  number: Scanned,
  money: { sign: string; start: number; end: number } | null,
): Draft {
  const { text } = task.plain
  const commas = number.ambiguous ? numberProblem(task, number) : null
  const numberNotes = [...notes, ...numberNote(task, number)]
  const rest = text.slice(number.end)
  if (money) return commas ?? currency(task, numberNotes, number, money.sign, money.start, money.end, rest)
  if (rest.trim() === '') return commas ?? bare(task, numberNotes, number)

  const from = number.end + (rest.length - rest.trimStart().length)
  const found = trailing(
    rest,
    (unit) => unitOfKind(unit, task.kind) !== null || (task.kind === 'money' && currencySigns.has(unit.trim())),
  )
  if (!found) return unreadUnit(task, number)
  if (commas) return commas
  const to = number.end + found.unit.trimEnd().length
  const all = found.extra
    ? [
        ...numberNotes,
        spelling(
          task,
          to,
          text.length,
          '',
          `"${found.extra}" was read over`,
          `without "${found.extra}"`,
          /\w/.test(found.extra) ? 'guess' : 'same',
        ),
      ]
    : numberNotes
  const unit = unitOfKind(found.unit, task.kind)
  if (found.unit.trim() === '') return bare(task, all, number)
  if (!unit) return currency(task, all, number, found.unit.trim(), from, to, '')
  const typed = text.slice(from, to)
  const nearly = unit.nearly
    ? [spelling(task, from, to, unit.symbol, `"${typed}" was read as ${unit.symbol}`, `the unit is ${unit.symbol}`)]
    : []
  return measure(task, [...all, ...nearly], number, unit, false)
}

function readGauge(task: Task): Draft | null {
  const match = /^\s*(?:(?:AWG|gauge)\s*#?\s*(\d+(?:\/0)?)|#?\s*(\d+(?:\/0)?)\s*(?:AWG|ga|gauge)\.?)\s*$/i.exec(
    task.plain.text,
  )
  if (!match) return null
  const gauge = gaugeNumber(match[1] ?? match[2] ?? '')
  if (Number.isNaN(gauge)) {
    const message = `"${task.plain.typed.trim()}" is no wire gauge; sizes are 40 to 1 AWG and 1/0 to 4/0 AWG`
    return problem(task, 'no-number', 0, task.plain.text.length, message)
  }
  // a gauge is a defined diameter, so nothing is rounded off
  const value = gaugeArea(gauge)
  return { quantity: { kind: 'area', dimension: 'area', value, unit: 'AWG', unitDefaulted: false, half: 0 }, notes: [] }
}

const before = /([A-Za-z]{0,3}[$€£¥₹₩₽₺]|[A-Za-z]{3})\s*(?=[-+.\d])/y

function moneyBefore(text: string, at: number): { sign: string; start: number; end: number } | null {
  before.lastIndex = at
  const match = before.exec(text)
  return match && { sign: match[1]!, start: at, end: at + match[0].length }
}

/** A price with a code or a sign of a currency at `start` to `end`. */
function currency(
  task: Task,
  notes: Note[],
  number: Scanned,
  sign: string,
  start: number,
  end: number,
  rest: string,
): Draft {
  if (rest.trim() !== '' && !/^\s*[.,]?-*\s*$/.test(rest)) return unreadUnit(task, number)
  const code = unitOfKind(sign, 'money')
  if (code) {
    const nearly = code.nearly
      ? [
          spelling(
            task,
            start,
            end,
            `${code.symbol}${start < number.start ? ' ' : ''}`,
            `"${sign}" was read as ${code.symbol}`,
            code.symbol,
          ),
        ]
      : []
    return measure(task, [...notes, ...nearly], number, code, false)
  }
  const codes = currencySigns.get(sign) ?? []
  const own = task.options.currency
  if (own && codes.includes(own) && !(codes.length === 1)) {
    const note = isPlainSign(sign) && own === codes[0] ? [] : [signNote(task, number, sign, own, start, end)]
    return measure(task, [...notes, ...note], number, { symbol: own, dimension: 'money' }, false)
  }
  if (codes[0] && isPlainSign(sign))
    return measure(task, notes, number, { symbol: codes[0], dimension: 'money' }, false)
  const what =
    codes.length > 1 ? `"${sign}" may be ${codes.slice(0, 3).join(', ')}` : `"${sign}" is no currency known here`
  const offered = codes.length ? codes.slice(0, 3) : [usualUnit(task)]
  return problem(
    task,
    'unknown-unit',
    start,
    end,
    `${what}; write the ISO 4217 code, such as ${kinds.money.example}`,
    () => offered.map((c) => guess(`${number.plain} ${c}`, `the currency is ${c}`)),
  )
}

function signNote(task: Task, number: Scanned, sign: string, own: string, start: number, end: number): Note {
  const ahead = start < number.start
  const message = `"${sign}" was read as ${own}, the currency of this library`
  return spelling(
    task,
    start,
    end,
    ahead ? `${own} ` : ` ${own}`.slice(task.plain.text[start - 1] === ' ' ? 1 : 0),
    message,
    `the code for "${sign}"`,
  )
}

function misplaced(task: Task, start: number, number: Scanned, typed: string): Draft {
  const sign = typed.includes('-') && !/[±+]/.test(typed) ? '-' : ''
  const shown = task.plain.typed.slice(task.plain.start(start), task.plain.end(number.start))
  const message = /^[-+] $/.test(typed)
    ? `The sign and the number must touch: write ${typed.trim()}${number.plain}`
    : `"${shown.trim()}" is more sign than one number takes`
  const mend = replaced(task, start, number.start, typed.trim() === '+' ? '+' : sign)
  return problem(task, 'misplaced-sign', start, number.end, message, () => [
    /^[-+] $/.test(typed) ? same(mend, 'the blank behind the sign is taken out') : guess(mend, 'one sign'),
  ])
}

function noNumber(task: Task, at: number): Draft {
  const { text, typed } = task.plain
  const shown = typed.trim()
  const from = text.slice(at).search(/[-+]?\.?\d/)
  const message = `No number is read in "${shown}"; ${kinds[task.kind].name} is expected, such as ${kinds[task.kind].example}`
  return problem(task, 'no-number', 0, text.length, message, () =>
    from > 0 ? [guess(typed.slice(task.plain.start(at + from)), 'only the number and its unit')] : [],
  )
}
