import type { Draft, Note, Task } from './draft.ts'
import { guess, problem, replaced } from './draft.ts'
import type { Scanned } from './number.ts'

/** A note on the plain characters `start` to `end`. */
export function spelling(
  { plain }: Task,
  start: number,
  end: number,
  replacement: string,
  message: string,
  why: string,
  certainty: Note['certainty'] = 'same',
): Note {
  return { code: 'spelling', message, start: plain.start(start), end: plain.end(end), replacement, why, certainty }
}

/** What is odd about how a number was printed. */
export function numberNote(task: Task, number: Scanned): Note[] {
  if (!number.odd) return []
  const { start, end, plain } = number
  const typed = task.plain.typed.slice(task.plain.start(start), task.plain.end(end))
  if (number.odd === 'spelling')
    return [spelling(task, start, end, plain, `"${typed}" was read as ${plain}`, 'plain digits')]
  const note = spelling(task, start, end, plain, `"${typed}" was read as ${plain}`, 'decimal comma written as a point')
  return [{ ...note, code: 'decimal-comma' }]
}

/** `1,190`: thousands or decimals? */
export function numberProblem(task: Task, number: Scanned): Draft {
  const { start, end, plain } = number
  const whole = plain.replace('.', '')
  const typed = task.plain.typed.slice(task.plain.start(start), task.plain.end(end))
  const message = `"${typed}" may be ${whole} or ${plain}; write the one that is meant`
  return problem(task, 'ambiguous-comma', start, end, message, () => [
    guess(replaced(task, start, end, whole), 'the comma parts thousands'),
    guess(replaced(task, start, end, plain), 'the comma is a decimal comma'),
  ])
}
