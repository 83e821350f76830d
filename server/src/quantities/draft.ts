import type { Phrase } from '../wording/phrase.ts'
import type { Plain } from './plain.ts'
import type { Fix, Quantity, QuantityKind, QuantityProblem, SpellingNote } from './quantity.ts'

export interface ReadOptions {
  /** The unit of a bare number. */
  readonly unit?: string
  /** ISO 4217 code of a bare price, and of a sign that several currencies share. */
  readonly currency?: string
}

/** What a reader of one kind is given. */
export interface Task {
  readonly plain: Plain
  readonly kind: QuantityKind
  readonly options: ReadOptions
}

/** A peculiarity and the characters that would fix it. */
export interface Note {
  readonly code: SpellingNote['code']
  readonly message: Phrase
  readonly start: number
  readonly end: number
  readonly replacement: string
  readonly why: Phrase
  readonly certainty: Fix['certainty']
}

export interface DraftProblem extends Omit<QuantityProblem, 'fixes'> {
  /** Worked out only when asked for; those that do not read are dropped. */
  readonly fixes: () => readonly Fix[]
}

export type Draft =
  | { readonly quantity: Quantity; readonly notes: readonly Note[]; readonly problem?: undefined }
  | { readonly quantity?: undefined; readonly problem: DraftProblem }

export const guess = (text: string, why: Phrase): Fix => ({ text, why, certainty: 'guess' })
export const same = (text: string, why: Phrase): Fix => ({ text, why, certainty: 'same' })

/** A problem at `start` to `end` of the plain text. */
export function problem(
  { plain }: Task,
  code: QuantityProblem['code'],
  start: number,
  end: number,
  message: Phrase,
  fixes: () => readonly Fix[] = () => [],
): { problem: DraftProblem } {
  const from = plain.start(start)
  return { problem: { code, message, start: from, end: Math.max(from, plain.end(end)), fixes } }
}

/** The typed text with the plain characters `start` to `end` replaced. */
export function replaced({ plain }: Task, start: number, end: number, replacement: string): string {
  return (
    plain.typed.slice(0, plain.start(start)) +
    replacement +
    plain.typed.slice(end > start ? plain.end(end) : plain.start(end))
  )
}
