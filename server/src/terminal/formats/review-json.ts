import type { Review } from '../../check/review.ts'
import type { FileReport } from '../file-report.ts'
import { jsonText } from '../visible.ts'
import { findingsToJson } from './json.ts'

/** One document with the figures of a system and what was found in it. */
export function reviewJson({ system, figures }: Review, report: FileReport): string {
  const document = { version: 1, system: system.id, ...figures, findings: findingsToJson(report) }
  return jsonText(document)
}
