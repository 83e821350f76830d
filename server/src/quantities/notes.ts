import { phrase } from '../wording/phrase.ts'
import type { Draft, Note, Task } from './draft.ts'
import { guess, problem, replaced } from './draft.ts'
import type { Scanned } from './number.ts'

type Spelling = Omit<Note, 'code' | 'certainty'> & { certainty?: Note['certainty'] }

/** A note on the plain characters `start` to `end`. */
export function spelling({ plain }: Task, note: Spelling): Note {
  return { code: 'spelling', certainty: 'same', ...note, start: plain.start(note.start), end: plain.end(note.end) }
}

/** A word beside the number that was read over: `approx.`, `typ`. Leaving it out may lose something. */
export function readOver(task: Task, start: number, word: string): Note {
  const harmless = !/[\w~<>≥≤]/.test(word)
  return spelling(task, {
    start,
    end: start + word.length,
    replacement: '',
    message: phrase`"${word}" was ignored; the number counts as typed`,
    why: phrase`without "${word}"`,
    certainty: harmless ? 'same' : 'guess',
  })
}

/** What is odd about how a number was printed. */
export function numberNote(task: Task, number: Scanned): Note[] {
  if (!number.odd) return []
  const { start, end, plain: replacement } = number
  const typed = task.plain.typed.slice(task.plain.start(start), task.plain.end(end))
  const message = phrase`"${typed}" was read as ${replacement}`
  const why =
    number.odd === 'decimal-comma' && replacement.includes('.')
      ? phrase`decimal comma written as a point`
      : phrase`plain digits`
  return [{ ...spelling(task, { start, end, replacement, message, why }), code: number.odd }]
}

/** `1,190`: thousands or decimals? */
export function numberProblem(task: Task, number: Scanned): Draft {
  const { start, end, plain } = number
  const whole = plain.replace('.', '')
  const typed = task.plain.typed.slice(task.plain.start(start), task.plain.end(end))
  const message = phrase`"${typed}" may be ${whole} or ${plain}; write the one that is meant`
  const sign = typed.includes(',') ? 'comma' : 'point'
  return problem(task, 'ambiguous-comma', start, end, message, () => [
    guess(replaced(task, start, end, whole), phrase`the ${sign} separates thousands`),
    guess(
      replaced(task, start, end, typed.includes(',') ? plain : `${plain}0`),
      phrase`the ${sign} is a decimal ${sign}`,
    ),
  ])
}
