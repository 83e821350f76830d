import type { Finding } from '../findings/finding.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Figures } from '../review/figures.ts'
import { figuresOf } from '../review/figures-of.ts'
import type { ResolvedSystem } from '../review/resolved.ts'
import { reviewRules } from '../review/rules/index.generated.ts'
import { judge } from './doubts.ts'
import { manyYears, resolveSystem } from './resolve-system.ts'
import { referenceFindings } from './system.ts'

/** A system with its figures and what the review found, before acceptances. */
export interface Review {
  readonly system: ResolvedSystem
  readonly figures: Figures
  readonly findings: readonly Finding[]
}

const known = new WeakMap<
  Library,
  Map<string, { readonly version: number; readonly years: number; readonly review: Review }>
>()

/** Reviews a system; the same library in the same state is not reviewed twice. */
export function reviewSystem(library: Library, file: ReadFile<'system'>, years = manyYears): Review {
  const reviews = known.get(library) ?? new Map<string, { version: number; years: number; review: Review }>()
  known.set(library, reviews)
  const before = reviews.get(file.path)
  if (before?.version === library.version && before.years === years) return before.review
  const system = resolveSystem(library, file, years)
  const figures = figuresOf(system)
  const findings = [
    ...referenceFindings(library, file),
    ...judge(reviewRules, { kind: file.kind, record: system, tree: file.tree }, figures),
  ]
  const review = { system, figures, findings }
  reviews.set(file.path, { version: library.version, years, review })
  return review
}
