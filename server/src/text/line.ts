import { phraseInWords, type Phrase } from '../wording/phrase.ts'
import type { SyntaxProblem } from './tree.ts'

/** A line without its ending. */
export interface Line {
  readonly start: number
  readonly text: string
  readonly indent: number
  /** Where its name begins: behind the dash of an item. */
  readonly column: number
}

/** What is said of a reading of a line, with the edits that make the line so. */
export function lineProblem(
  code: string,
  sentence: Phrase,
  start: number,
  length: number,
  fix: NonNullable<SyntaxProblem['fix']>,
): SyntaxProblem {
  return { code, message: phraseInWords(sentence), sentence, span: { start, end: start + Math.max(1, length) }, fix }
}
