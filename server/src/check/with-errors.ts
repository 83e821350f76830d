import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { Bundle } from '../wording/bundle.ts'
import { joined, phrase, phraseInWords } from '../wording/phrase.ts'
import { accept } from './accept.ts'
import { acceptancesIn } from './acceptances.ts'
import { foundAlone } from './panel.ts'
import { readingFound } from './reading.ts'
import { severitiesOf } from './severities.ts'

/**
 * The panels among which somebody chooses whose records have errors, so that they may only look good by mistake. Each record is
 * looked at by itself, as a library of hundreds would take seconds else.
 *
 * @param today  year-month-day
 */
export function withErrors<T extends { readonly id: string; readonly path: string | null }>(
  library: Library,
  panels: readonly T[],
  today: string,
): readonly string[] {
  return panels.filter(({ path }) => hasErrors(library, path, today)).map(({ id }) => id)
}

function hasErrors(library: Library, path: string | null, today: string): boolean {
  const file = path === null ? undefined : library.file(path)
  if (path === null || file?.kind !== 'panel' || file.unread) return false
  const severities = severitiesOf(library.settings(path)?.record)
  const found = [...readingFound(file.readFindings()), ...foundAlone(library, file as ReadFile<'panel'>, today)]
  return accept(severities(found), acceptancesIn(file)).open.some(({ severity }) => severity === 'error')
}

/** What to say of them: one sentence, or none. */
export function correctFirst(ids: readonly string[], bundle: Bundle | undefined): readonly string[] {
  if (ids.length === 0) return []
  const said =
    ids.length === 1
      ? phrase`${ids[0]} has errors; correct them before you choose it.`
      : phrase`${joined(ids)} have errors; correct them before you choose one.`
  return [phraseInWords(said, bundle)]
}
