import { phrase } from '../wording/phrase.ts'
import { currencySigns } from './currencies.ts'
import type { Draft, Note, Task } from './draft.ts'
import { guess, problem } from './draft.ts'
import { kinds } from './kinds.ts'
import { bare, measure, usualUnit } from './measure.ts'
import { numberNote, numberProblem, spelling } from './notes.ts'
import type { Scanned } from './number.ts'
import { nearlyNote, readLead, readNumber } from './read-one.ts'
import { trailing, unreadUnit } from './unread-unit.ts'
import { unitOfKind } from './unit-text.ts'

const before = /([A-Za-z]{0,3}[$€£¥₹₩₽₺]|[A-Za-z]{3})\s*(?=[-+.\d])/y
const noCents = /\s*[.,]?--?(?=\s|$)/y

/** A currency before or behind its number: `289 USD`, `USD 289`, `€289`, `289.-`. */
export function readMoney(task: Task): Draft {
  const { text } = task.plain
  const { notes, end } = readLead(task)
  before.lastIndex = end
  const ahead = before.exec(text)
  const read = readNumber(task, ahead ? end + ahead[0].length : end)
  if ('problem' in read) return read
  const number = asAmount(text, read)
  const all = [...notes, ...numberNote(task, number)]
  const rest = text.slice(number.end)
  if (ahead) {
    const twice = codesOf(ahead[1]!).includes(rest.trim()) // $289 USD
    if (twice) return measure(task, all, number, { symbol: rest.trim(), dimension: 'money' }, false)
    if (rest.trim() !== '') return unreadUnit(task, number)
    return number.ambiguous
      ? numberProblem(task, number)
      : priced(task, all, number, { sign: ahead[1]!, start: end, before: true })
  }
  const found = trailing(
    rest,
    (unit) => unit.trim() === '' || codesOf(unit.trim()).length > 0 || unitOfKind(unit, 'money') !== null,
  )
  if (!found) return unreadUnit(task, number)
  if (number.ambiguous) return numberProblem(task, number)
  const sign = found.unit.trim()
  if (sign === '') return bare(task, all, number)
  return priced(task, all, number, { sign, start: text.indexOf(sign, number.end), before: false })
}

const codesOf = (sign: string): readonly string[] =>
  currencySigns.get(sign) ?? currencySigns.get(sign.toLowerCase()) ?? []

/** Only these currencies have thousandths; elsewhere three digits behind a comma are thousands. */
const thousandths = /BHD|IQD|JOD|KWD|LYD|OMR|TND/i

function asAmount(text: string, number: Scanned): Scanned {
  noCents.lastIndex = number.end
  const dash = noCents.exec(text)
  if (dash) return { ...number, end: number.end + dash[0].length, odd: 'spelling' }
  if (thousandths.test(text)) return number
  if (number.ambiguous) {
    const { ambiguous, ...rest } = number
    return { ...rest, value: number.value * 1000, half: 0.5, plain: number.plain.replace('.', ''), odd: 'spelling' }
  }
  const typed = text.slice(number.start, number.end)
  return /^[1-9]\d{0,2}\.\d{3}$/.test(typed) ? { ...number, ambiguous: true } : number
}

interface Sign {
  readonly sign: string
  readonly start: number
  readonly before: boolean
}

function priced(task: Task, notes: Note[], number: Scanned, { sign, start, before }: Sign): Draft {
  const end = start + sign.length
  const code = unitOfKind(sign, 'money')
  if (code) {
    const nearly = code.nearly ? [nearlyNote(task, start, end, code.symbol)] : []
    return measure(task, [...notes, ...nearly], number, code, false)
  }
  const codes = codesOf(sign)
  const own = codes.find((c) => c === task.options.currency)
  const [first] = codes
  if (first && (sign === '£' || codes.length === 1))
    return measure(task, notes, number, { symbol: own ?? first, dimension: 'money' }, false)
  if (own) {
    const message = phrase`"${sign}" was read as ${own}, the currency of this library`
    const blank = task.plain.text[before ? end : start - 1] === ' ' ? '' : ' '
    const replacement = before ? own + blank : blank + own
    const note = spelling(task, { start, end, replacement, message, why: phrase`the code for "${sign}"` })
    return measure(task, [...notes, note], number, { symbol: own, dimension: 'money' }, false)
  }
  const what = first
    ? phrase`"${sign}" may be ${codes.slice(0, 3).join(', ')}`
    : phrase`"${sign}" is no currency known here`
  const message = phrase`${what}; write the ISO 4217 code, such as ${kinds.money.example}`
  const offered = first ? codes.slice(0, 3) : [usualUnit(task)]
  const sign1 = number.value < 0 ? '-' : ''
  return problem(task, 'unknown-unit', start, end, message, () =>
    offered.map((c) => guess(`${sign1}${number.plain} ${c}`, phrase`the currency is ${c}`)),
  )
}
