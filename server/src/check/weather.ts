import type { Finding, RuleFacts } from '../findings/finding.ts'
import { finding } from '../findings/make.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import { weatherPath } from '../records/weather-file.ts'

export const weatherFacts = {
  unreadable: {
    id: 'hourly-weather-unreadable',
    severity: 'warning',
    reason: 'Without its hours the year is made from the monthly means, as for a climate that names no file.',
    source: 'the file itself',
  },
} as const satisfies Record<string, RuleFacts>

/** A file of hourly weather that is not there or cannot be used. */
export function weatherFindings(library: Library, { path, record }: ReadFile<'climate'>): readonly Finding[] {
  const { hourly } = record
  if (!hourly) return []
  const place = weatherPath(path, hourly.value)
  if (place === null)
    return [
      finding(weatherFacts.unreadable, hourly, `${hourly.text} must be an .epw file beside this record or below it.`),
    ]
  const weather = library.weather(place)
  return typeof weather === 'string' ? [finding(weatherFacts.unreadable, hourly, `${hourly.text} ${weather}.`)] : []
}
