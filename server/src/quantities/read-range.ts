import { phrase } from '../wording/phrase.ts'
import { toBase } from './convert.ts'
import type { Draft, Note, Task } from './draft.ts'
import { guess, problem } from './draft.ts'
import { kinds } from './kinds.ts'
import { defaultUnit, halfInBase, missingUnit } from './measure.ts'
import { numberNote, numberProblem, spelling } from './notes.ts'
import { scanNumber } from './number.ts'
import { plain } from './plain.ts'
import { unreadUnit } from './unread-unit.ts'
import { unitOfKind } from './unit-text.ts'

const start = /\s*(?:from\s+)?([-+] ?)?/iy
const between =
  /\s*(?:((?:(?:°|deg\.?)\s*)?[CFK](?![A-Za-z])|°)\s*)?(?:\.{2,3}|to|through|and|~|\/|-(?! *$)|,(?= ?[-+]))\s*([-+] ?)?/iy

/** Two temperatures, the lowest and the highest: `-40..85 °C`, `-40 °C to +85 °C`. */
export function readRange(task: Task): Draft {
  const { text } = task.plain
  for (const { index } of text.matchAll(/[(/]/g)) {
    const [first, second] = [
      text.slice(0, index).trim(),
      text
        .slice(index + 1)
        .replace(')', '')
        .trim(),
    ]
    const both = /[CFK]$/.test(first) && readBoth(task, first, second)
    if (both) return both
  }
  return readRangeOf(task)
}

/** `-40 to 185 °F (-40..85 °C)`: the same in two units, read as the first where they agree. */
function readBoth(task: Task, first: string, second: string): Draft | null {
  const [a, b] = [first, second].map((part) => readRangeOf({ ...task, plain: plain(part) }).quantity)
  if (!a || !b || a.unit === b.unit) return null
  const near = (x = 0, y = 0) => Math.abs(x - y) <= 1.01 * (a.half + b.half)
  if (!near(a.value, b.value) || !near(a.upper, b.upper)) return null
  const message = phrase`"${task.plain.typed.trim()}" agrees, and was read as ${first}`
  const replaced = { start: 0, end: task.plain.text.trimEnd().length, replacement: first }
  return { quantity: a, notes: [spelling(task, { ...replaced, message, why: phrase`one of the two` })] }
}

function readRangeOf(task: Task): Draft {
  const { text, typed } = task.plain
  start.lastIndex = 0
  const [lead = '', sign1 = ''] = start.exec(text) ?? []
  const low = scanNumber(text, lead.length, false)
  if (!low) return twoWanted(task, 'no-number')
  between.lastIndex = low.end
  const gap = between.exec(text)
  const high = gap && scanNumber(text, low.end + gap[0].length, false)
  if (!gap || !high) return oneOnly(task, low)
  for (const number of [low, high]) if (number.ambiguous) return numberProblem(task, number)

  const rest = text.slice(high.end)
  const typedUnit = rest.trim() !== ''
  const last = typedUnit
    ? unitOfKind(rest, task.kind)
    : gap[1]
      ? unitOfKind(gap[1], task.kind)
      : defaultUnit(task, high.value)
  if (!last) return typedUnit ? unreadUnit(task, high) : missingUnit(task, high.end)
  const first = gap[1] && gap[1] !== '°' ? (unitOfKind(gap[1], task.kind) ?? last) : last
  const a = toBase(signed(sign1, low.value), first.symbol)
  const b = toBase(signed(gap[2], high.value), last.symbol)
  const notes: Note[] = [...numberNote(task, low), ...numberNote(task, high)]
  if (a > b) {
    const fix = `${signed(gap[2], 1) < 0 ? '-' : ''}${high.plain} to ${signed(sign1, 1) < 0 ? '-' : ''}${low.plain} ${last.symbol}`
    if (first.symbol !== last.symbol) return twoWanted(task, 'misplaced-sign')
    const message = phrase`"${typed.trim()}" was read with the lower end first`
    notes.push(
      spelling(task, { start: 0, end: text.length, replacement: fix, message, why: phrase`the lower end first` }),
    )
  }
  const half = Math.max(halfInBase(low.half, first.symbol), halfInBase(high.half, last.symbol))
  const unitDefaulted = !typedUnit && !gap[1]
  const ends = { value: Math.min(a, b), upper: Math.max(a, b), unit: last.symbol, unitDefaulted, half }
  return { quantity: { kind: task.kind, dimension: 'temperature', ...ends }, notes: a > b ? notes.slice(-1) : notes }
}

const signed = (sign: string | undefined, value: number) => (sign?.startsWith('-') ? -value : value)

function oneOnly(task: Task, low: { end: number; plain: string }): Draft {
  const { text } = task.plain
  const second = /^(?:\s*(?:°\s*)?[CFK]|\s*°)?\s+([-+]?\d+(?:\.\d+)?\s*(?:°\s*)?[CFK])\s*$/.exec(text.slice(low.end))
  const first = text.slice(0, low.end).trim()
  return twoWanted(task, 'no-number', () =>
    second ? [guess(`${first} to ${second[1]}`, phrase`from the first to the second`)] : [],
  )
}

function twoWanted(
  task: Task,
  code: 'no-number' | 'misplaced-sign',
  fixes?: () => readonly ReturnType<typeof guess>[],
): Draft {
  const { text, typed } = task.plain
  const message = phrase`"${typed.trim()}" does not read as the lowest and the highest temperature; write ${kinds[task.kind].example}`
  return problem(task, code, 0, text.length, message, fixes)
}
