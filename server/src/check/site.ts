import type { Library } from '../library/library.ts'
import { siteOf, type Site } from '../values/site.ts'

/** The site that the settings of a file's library describe, with its climate where one is named. */
export function siteFor(library: Library, path: string): Site {
  const settings = library.settings(path)?.record
  const id = settings?.site.climate?.value
  const climate = id === undefined ? undefined : library.byId('climate', id, path)[0]?.record
  return siteOf(settings, climate)
}
