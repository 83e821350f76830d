import { phraseInWords, type Phrase } from '../wording/phrase.ts'
import { shortened } from './shortened.ts'
import type { Edit } from './span.ts'
import type { OtherReading, SyntaxProblem } from './tree.ts'

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

/** What is around a line that is read in another way. */
export interface Surroundings {
  /** The lines above and below it that hold something. */
  readonly above: Line | undefined
  readonly next: Line | undefined
  /** Columns of the lines above that are further out than it, from the inside. */
  readonly outer: readonly number[]
  /** What ends the lines of the file. */
  readonly eol: string
  /** Of fields that the file may have. */
  readonly names: ReadonlySet<string>
  /** Of those that hold sentences. */
  readonly prose: ReadonlySet<string>
}

/** @param text  the line, as it is then */
export function reading(
  code: string,
  edits: readonly Edit[],
  [start, length]: readonly [number, number],
  sentence: Phrase,
  why: Phrase,
  text: string,
): OtherReading {
  const fix = { edits, why, certainty: 'guess', text: shortened(text.trim()) } as const
  return { edits, problem: lineProblem(code, sentence, start, length, fix) }
}

export const withoutComment = (text: string) => text.split(' #')[0]!.trimEnd()

export const insert = (at: number, text: string): Edit => ({ span: { start: at, end: at }, text })
