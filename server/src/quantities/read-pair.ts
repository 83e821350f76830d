import { phrase } from '../wording/phrase.ts'
import { fromBase } from './convert.ts'
import type { Draft, Task } from './draft.ts'
import { guess, problem } from './draft.ts'
import { formatNumber } from './format.ts'
import { spelling } from './notes.ts'
import { plain } from './plain.ts'
import type { Quantity } from './quantity.ts'

/** The two halves of `46.9 in (1191 mm)`, `46 7/8 in / 1190 mm`, `115 °F, 46 °C`: a unit, a mark, a number. */
function halvesOf(text: string): readonly [string, string] | null {
  for (const { index } of text.matchAll(/[(/[,;=|]/g)) {
    const [first, second] = [text.slice(0, index).trim(), text.slice(index + 1).trim()]
    if (/[^\d.,]$/.test(first) && /^[-+]?\d/.test(second)) return [first, second.replace(/[)\]]$/, '').trim()]
  }
  return null
}

/**
 * One quantity printed in two units: each says what the other means. They are read where they agree to the digits that are
 * printed, and then as the finer one.
 *
 * @param readOne  reads one of them
 */
export function readPair(task: Task, readOne: (task: Task) => Draft): Draft | null {
  const { text } = task.plain
  const halves = halvesOf(text)
  if (!halves) return null
  const [one, other] = halves.map((part): Half => ({ part, ...readOne({ ...task, plain: plain(part) }) })) as [
    Half,
    Half,
  ]
  if (!isWhole(one.quantity) || !isWhole(other.quantity) || one.quantity.unit === other.quantity.unit) return null
  const [a, b] = [one.quantity, other.quantity]
  if (Math.abs(a.value - b.value) > 1.01 * (a.half + b.half)) {
    const length = text.trimEnd().length
    const converted = `${formatNumber(fromBase(a.value, b.unit), 4)} ${b.unit}`
    const message = phrase`${one.part} is ${converted}, and ${other.part} is beside it; keep the one that is printed`
    return problem(task, 'two-numbers', 0, length, message, () => [
      guess(one.part, phrase`the first number`),
      guess(other.part, phrase`the second number`),
    ])
  }
  const finer = b.half < a.half ? other : one
  const note = spelling(task, {
    start: 0,
    end: text.trimEnd().length,
    replacement: finer.part,
    message: phrase`"${text.trim()}" agrees, and was read as ${finer.part}`,
    why: phrase`one of the two`,
  })
  return { quantity: finer.quantity!, notes: [note] }
}

type Half = { readonly part: string } & Draft

const isWhole = (quantity: Quantity | undefined): quantity is Quantity =>
  quantity !== undefined && !quantity.unitDefaulted && quantity.upper === undefined
