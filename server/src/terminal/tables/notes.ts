import { sayIn } from '../../wording/phrase.ts'
import type { World } from '../world.ts'
import { foldWords } from './fitted-table.ts'
import { noteInMarkdown } from './formats.ts'

/** How many rows --filter left; nothing where it left all. */
export function filterNote(left: number, all: number, bundle: World['bundle']): readonly string[] {
  if (left === all) return []
  const say = sayIn(bundle)
  return [left === 1 ? say`1 of ${all} panels matches --filter.` : say`${left} of ${all} panels match --filter.`]
}

/** Sentences as they are printed below a table. */
export const below = (notes: readonly string[], format: 'text' | 'markdown', width: number): readonly string[] =>
  format === 'markdown' ? notes.map(noteInMarkdown) : notes.map((note) => `${foldWords(note, width).join('\n')}\n`)

/** Beside a CSV, which has no place for them, sentences go to standard error. */
export function besideCsv(world: World, notes: readonly string[]): void {
  for (const note of notes) world.err(`wattproof: ${note}\n`)
}
