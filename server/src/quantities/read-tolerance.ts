import { phrase } from '../wording/phrase.ts'
import { toBase } from './convert.ts'
import type { Draft, Task } from './draft.ts'
import { guess, problem } from './draft.ts'
import { kinds } from './kinds.ts'
import { defaultUnit, halfInBase, missingUnit } from './measure.ts'
import { numberNote, numberProblem } from './notes.ts'
import type { Scanned } from './number.ts'
import { scanNumber } from './number.ts'
import type { UnitFound } from './unit-text.ts'
import { unitOfKind } from './unit-text.ts'
import { unreadUnit } from './unread-unit.ts'

const start = /\s*(±|\+ ?\/? ?-|- ?\/ ?\+|[-+])?\s*/y
const between = /\s*(?:(%|[mk]?Wp?)\s*)?(?:\/|\.{2,3}|to|~|,(?= ?[-+])|-(?! *$))\s*([-+] ?)?/iy

/** How far the real value may lie below and above the printed one: `0/+5 %`, `±3 %`, `+5/-0 W`; `5 %` is ±5 %. */
export function readTolerance(task: Task): Draft {
  const { text } = task.plain
  start.lastIndex = 0
  const [lead = '', sign] = start.exec(text) ?? []
  const first = scanNumber(text, lead.length, false)
  if (!first) return unread(task)
  if (first.ambiguous) return numberProblem(task, first)
  const both = sign !== undefined && sign.length > 1 ? true : sign === '±'
  between.lastIndex = first.end
  const gap = both ? null : between.exec(text)
  const second = gap && scanNumber(text, first.end + gap[0].length, false)
  if (!gap || !second) {
    const v = first.value
    const ends = sign === '+' ? [0, v] : sign === '-' ? [-v, 0] : [-v, v]
    return withUnit(task, first, [first], ends)
  }
  if (second.ambiguous) return numberProblem(task, second)
  const a = sign === '-' ? -first.value : first.value
  const b = gap[2]?.startsWith('-') ? -second.value : second.value
  if (!sign && !gap[2] && first.value > 0 && second.value > 0) return signless(task, first, second)
  return withUnit(task, second, [first, second], [a, b], gap[1])
}

function withUnit(
  task: Task,
  last: Scanned,
  numbers: readonly Scanned[],
  ends: readonly number[],
  early?: string,
): Draft {
  const rest = task.plain.text.slice(last.end)
  const typed = rest.trim() === '' ? early : rest
  const unit: UnitFound | null = typed === undefined ? defaultUnit(task, last.value) : unitOfKind(typed, task.kind)
  if (!unit) return typed === undefined ? missingUnit(task, last.end) : unreadUnit(task, last)
  if (early && unitOfKind(early, task.kind)?.symbol !== unit.symbol) return unread(task)
  const { symbol, dimension } = unit
  const half = halfInBase(Math.max(...numbers.map((n) => n.half)), symbol)
  const [value, upper] = [toBase(Math.min(...ends), symbol), toBase(Math.max(...ends), symbol)]
  const quantity = { kind: task.kind, dimension, value, upper, unit: symbol, unitDefaulted: typed === undefined, half }
  return { quantity, notes: numbers.flatMap((number) => numberNote(task, number)) }
}

/** `3/5 %`: which is below? */
function signless(task: Task, first: Scanned, second: Scanned): Draft {
  const { text, typed, ...plain } = task.plain
  const unit = typed.slice(plain.start(second.end)).trim()
  const signed = `-${first.plain}/+${second.plain} ${unit}`.trim()
  const message = phrase`"${typed.trim()}" has no signs; write how far below and above, such as ${signed}`
  return problem(task, 'misplaced-sign', first.start, second.end, message, () => [
    guess(signed, phrase`below and above`),
    guess(`+${first.plain}/+${second.plain} ${unit}`.trim(), phrase`both above`),
  ])
}

function unread(task: Task): Draft {
  const { text, typed } = task.plain
  return problem(
    task,
    'no-number',
    0,
    text.length,
    phrase`"${typed.trim()}" does not read as a tolerance; write ${kinds.tolerance.example}`,
  )
}
