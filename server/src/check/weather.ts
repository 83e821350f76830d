import { foundAt, type Found, type Speaker } from '../findings/found.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import { weatherPath } from '../records/weather-file.ts'

export const weatherFacts = {
  unreadable: {
    id: 'hourly-weather-unreadable',
    severity: 'warning',
    reason: 'Without its hours the year is made from the monthly means, as for a climate that names no file.',
    source: 'the file itself',
    messages: {
      elsewhere: '{file} must be an .epw file beside this record or below it',
      unreadable: '{file} {why}',
    },
  },
} as const satisfies Record<string, Speaker>

/** A file of hourly weather that is not there or cannot be used. */
export function weatherFound(library: Library, { path, record }: ReadFile<'climate'>): readonly Found[] {
  const { hourly } = record
  if (!hourly) return []
  const file = weatherPath(path, hourly.value)
  if (file === null) return [foundAt(weatherFacts.unreadable, hourly, { say: 'elsewhere', with: { file: hourly } })]
  const weather = library.weather(file)
  return typeof weather === 'string'
    ? [foundAt(weatherFacts.unreadable, hourly, { say: 'unreadable', with: { file: hourly, why: weather } })]
    : []
}
