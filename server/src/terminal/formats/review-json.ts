import type { Review } from '../../check/review.ts'
import { isKept, marginsOf } from '../../review/margins.ts'
import { tooLarge } from '../../review/too-large.ts'
import { totalsOf } from '../../review/totals.ts'
import type { FileReport } from '../file-report.ts'
import { jsonText } from '../visible.ts'
import { findingsToJson } from './json.ts'
import { powerLeft } from './power-left-json.ts'
import type { Bundle } from '../../wording/bundle.ts'

/** One document with the figures of a system and what was found in it. What names something is English in every language, sentences are not. */
export function reviewJson({ system, figures }: Review, report: FileReport, bundle?: Bundle): string {
  const margins = marginsOf(system, figures).map((margin) => {
    const { what, value, limit, unit, atLeast } = margin
    return { what, value, limit, unit, at_least: atLeast ?? false, kept: isKept(margin) }
  })
  const left = powerLeft(system)
  const document = {
    version: 1,
    system: system.id,
    ...figures,
    totals: totalsOf(system, figures),
    margins,
    too_large: tooLarge(figures, bundle),
    ...(left.length > 0 && { power_left: left }),
    findings: findingsToJson(report),
  }
  return jsonText(document)
}
