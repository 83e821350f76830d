import type { Strings, SurfaceRow } from '../../review/choosing/row.ts'
import { jsonText } from '../visible.ts'
import type { OnSurface } from './on-surface.ts'
import { errorsShown } from './surface-notes.ts'

/** What --write put into the system. */
export interface Written {
  /** Path of the system. */
  readonly file: string
  readonly panel: string
  readonly count: number
  readonly strings: Strings
  /** Id of the array, which may be a new one; null where it has none. */
  readonly array: string | null
  /** The same in a sentence, with what is left to do by hand. */
  readonly said: string
}

/** The comparison as a document, with what was written of it. */
export function surfaceJson(comparison: OnSurface, rows: readonly SurfaceRow[], written?: Written): string {
  const { file, target, beside, notCounted } = comparison
  const shown = errorsShown(comparison, { rows })
  const wrong = comparison.withErrors.filter((id) => shown.includes(id) || id === written?.panel)
  return jsonText({
    version: 1,
    system: file.id,
    surface: target.surface.id?.value ?? '',
    ...(beside !== null && { beside }),
    rows,
    ...(notCounted.length > 0 && { not_checked: notCounted }),
    ...(wrong.length > 0 && { with_errors: wrong }),
    ...(written && { written }),
  })
}
