import { correctFirst } from '../../check/with-errors.ts'
import type { SurfaceRow } from '../../review/choosing/row.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'
import { filterNote } from '../tables/notes.ts'
import type { OnSurface } from './on-surface.ts'
import { isPart } from './surface-columns.ts'

type Say = ReturnType<typeof sayIn>

/** Which rows of a comparison are shown, by the columns of these keys. */
export interface ShownRows {
  readonly rows: readonly SurfaceRow[]
  readonly keys: readonly string[]
}

/** Panels that are shown and whose records have errors. */
export const errorsShown = ({ withErrors }: Pick<OnSurface, 'withErrors'>, { rows }: Pick<ShownRows, 'rows'>) =>
  withErrors.filter((id) => rows.some(({ panel }) => panel === id))

/** What is said below the table of panels on a surface, in sentences. */
export function surfaceNotes(comparison: OnSurface, shown: ShownRows, bundle: Bundle | undefined): readonly string[] {
  const say = sayIn(bundle)
  const taken = shown.rows.filter(({ excluded }) => excluded === null)
  return [
    ...filterNote(shown.rows.length, comparison.rows.length, bundle),
    ...correctFirst(errorsShown(comparison, shown), bundle),
    ...fewer(taken.find(isPart), say),
    ...otherController(comparison, taken, say),
    ...comparison.notCounted,
    ...(taken.length > 0 && shown.keys.includes('front')
      ? [say`On the front: no other panel gives at least as much energy a year for no more weight and no more money.`]
      : []),
    say`Energy and price are those of the panels on this surface. The figures are an aid; local codes and licensed practice decide.`,
  ]
}

/** What "4 of 8" in the table means, by its own first example. */
function fewer(row: SurfaceRow | undefined, say: Say): readonly string[] {
  if (!row?.strings) return []
  const { count, strings } = row
  const wired = strings.in_series * strings.in_parallel
  return [
    say`${wired} of ${count}: ${count} fit; the wiring and the customer's limits allow ${wired}. All figures are of those ${wired}.`,
  ]
}

function otherController({ controller }: OnSurface, taken: readonly SurfaceRow[], say: Say): readonly string[] {
  if (controller === null || taken.every(({ strings }) => !strings || strings.controller === controller)) return []
  return [
    say`The system has the controller ${controller} here; where another is named, that one takes more of the panels and would replace it.`,
  ]
}
