import { named, phrase, type Phrase } from '../wording/phrase.ts'
import type { Draft, Task } from './draft.ts'
import { guess, problem, replaced } from './draft.ts'
import { unitNames, kinds } from './kinds.ts'
import { inches, usualUnit } from './measure.ts'
import { joined, looksLikeDigits } from './misread.ts'
import type { Scanned } from './number.ts'
import type { Fix } from './quantity.ts'
import { completedUnit, nearestUnits, unitKey, unitOfAnyKind, unitOfKind } from './unit-text.ts'

const behind = /(?<![\s,;(])[\s,;(]*(?:typ|max|min|nom|approx|each)\.?\)?$|(?<!\s)\s*(?<![.,;])[.,;]+$/i

/** Parts a unit from what stands behind it: `V, typ`, `in.`, `USD;`. null where no part of it is a unit. */
export function trailing(rest: string, isUnit: (unit: string) => boolean): { unit: string; extra: string } | null {
  if (isUnit(rest)) return { unit: rest, extra: '' }
  const match = behind.exec(rest.trimEnd())
  const unit = rest.slice(0, match?.index)
  return match && isUnit(unit) ? { unit, extra: match[0].trim() } : null
}

/** A number stands there, and what follows is no unit of the kind: say what it is and what would fit. */
export function unreadUnit(task: Task, number: Scanned): Draft {
  const { text, typed, ...plain } = task.plain
  const rest = text.slice(number.end)
  const start = number.end + (rest.length - rest.trimStart().length)
  const end = text.trimEnd().length
  const unit = text.slice(start, end)
  const shown = typed.slice(plain.start(start), plain.end(end))
  const wanted = phrase`${named(kinds[task.kind].name)} is expected here, such as ${kinds[task.kind].example}`

  const sign = /^[-+](?:\s+|$)/.exec(unit)
  if (sign && unitOfKind(unit.slice(sign[0].length) || usualUnit(task), task.kind)) {
    const fix = `${sign[0].trim()}${number.plain} ${unit.slice(sign[0].length)}`.trim()
    return problem(task, 'misplaced-sign', start, start + 1, phrase`The sign is after the number; write ${fix}`, () => [
      guess(fix, phrase`the sign before the number`),
    ])
  }
  // a letter that touches the number is no unit of another kind
  const digits = looksLikeDigits(typed)
  const isTouching = start === number.end && !unitOfKind(unit, task.kind)
  if (digits && isTouching) return letterInNumber(task, end, wanted, digits)
  const other = unitOfAnyKind(unit)
  const units = (likely: readonly string[]) =>
    likely.map((u) => guess(replaced(task, start, end, spaced(text, start, u)), phrase`${u} instead of ${shown}`))
  if (other) {
    const rate = other.symbol === '°C' && task.kind === 'current' && unit === 'C'
    const message = rate
      ? phrase`"${typed.trim()}" is a charge rate, a multiple of the capacity; ${wanted}`
      : phrase`${typed.trim()} is ${named(unitNames[other.dimension])}; ${named(kinds[task.kind].name)} belongs here, such as ${kinds[task.kind].example}`
    return problem(task, 'wrong-dimension', start, end, message, () =>
      rate ? [] : units(inPlaceOf(task, unit, number)),
    )
  }
  const second = /(?<![A-Za-wyzΩ%°^\d])[-+±]?(?:(?<![.\d])\.)?\d/.exec(unit)
  if (digits && second) return letterInNumber(task, end, wanted, digits)
  if (second) return twoNumbers(task, number, start + second.index, end, wanted)
  return problem(task, 'unknown-unit', start, end, phrase`"${shown}" is no unit known here; ${wanted}`, () =>
    units(nearestUnits(unit, task.kind, usualUnit(task))),
  )
}

function letterInNumber(task: Task, end: number, wanted: Phrase, digits: readonly Fix[]): Draft {
  const message = phrase`"${task.plain.typed.trim()}" has a letter where a digit belongs; ${wanted}`
  return problem(task, 'no-number', 0, end, message, () => digits)
}

/** What a unit of another dimension may stand for, likeliest first. */
function inPlaceOf(task: Task, unit: string, { plain }: Scanned): readonly string[] {
  const completed = completedUnit(unit, task.kind)
  if (completed) return [completed]
  // only sides and weights are printed in units of two systems
  const other = inches[task.kind] ?? []
  return plain.includes('/') && other.length > 0 ? other : [...new Set([usualUnit(task), ...other.slice(0, 1)])]
}

/** Letters may touch the number where they did; nothing else may. */
const spaced = (text: string, start: number, unit: string) =>
  text[start - 1] === ' ' || /[A-Za-z%°]/.test(text[start] ?? '') ? unit : ` ${unit}`

function twoNumbers(task: Task, first: Scanned, start: number, end: number, wanted: Phrase): Draft {
  const { typed, text, ...plain } = task.plain
  const shown = typed.slice(plain.start(start), plain.end(end))
  const message = phrase`One number belongs here and "${shown}" is a second one; ${wanted}`
  return problem(task, 'two-numbers', start, end, message, () => {
    const one = joined(typed)
    if (one.length > 0) return one
    // with three, choosing one would drop two
    if ((text.match(numbers)?.length ?? 0) > 2) return []
    const between = text.slice(first.end - 1, start + 1)
    const ahead = typed.slice(0, plain.start(start)).replace(separators, '').replace(aside, '')
    const behind = shown.replace(aside, '').replace(/\)$/, '')
    const unit = /(?<![^\d\s.,])[^\d\s.,]*$/.exec(unitKey(text.slice(start, end)))?.[0] ?? ''
    const bare = unitOfKind(ahead.slice(plain.end(first.end)), task.kind) === null && unitOfKind(unit, task.kind)
    if (/^[.,]\s+\d|^\d\s+[.,](?:\s*\d)?$/.test(between)) {
      const rest = text.slice(start).replace(/^[.,]/, '')
      return [guess(`${text.slice(0, first.end).replace(/[.,]$/, '')}.${rest}`, phrase`no space in the number`)]
    }
    const both = [
      guess(bare ? `${ahead} ${unit}` : ahead, phrase`the first number`),
      guess(behind, phrase`the second number`),
    ]
    return /±\s*$/.test(text.slice(0, start)) ? both.slice(0, 1) : both
  })
}

const numbers = /(?<![A-Za-wyz^\d.,/])\d+(?:[.,/]\d+)*/g
// a quantity is read from 200 characters at most
// eslint-disable-next-line regexp/no-super-linear-move
const separators = /(?:[\s,;:x×/&(+±~=@.–—]|\b(?:and|or|to|by)|-)+$/i
const aside = /(?<!\s)\s*\([^()]*\)$/
