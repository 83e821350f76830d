import type { Bundle } from '../wording/bundle.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import { figuresOf } from '../review/figures-of.ts'
import type { Figures } from '../review/figures.ts'
import type { ResolvedSystem } from '../review/resolved.ts'
import { manyYears, resolveSystem } from './resolve-system.ts'

/** A system with the records that it names, and its figures. */
export interface Review {
  readonly system: ResolvedSystem
  readonly figures: Figures
}

export function reviewOf(library: Library, file: ReadFile, years = manyYears, bundle?: Bundle): Review | null {
  if (file.kind !== 'system') return null
  const system = resolveSystem(library, file as ReadFile<'system'>, years)
  return { system, figures: figuresOf(system, bundle) }
}
