import { checkFile } from '../../../server/src/check/check.ts'
import type { Library } from '../../../server/src/library/library.ts'
import { formData } from '../../../server/src/review/page/form-data.ts'
import { pageData } from '../../../server/src/review/page/page-data.ts'
import { reportOf } from '../../../server/src/terminal/file-report.ts'
import { reviewJson } from '../../../server/src/terminal/formats/review-json.ts'
import { reviewText } from '../../../server/src/terminal/formats/review-text.ts'

const today = '2026-11-25'

/** What is said of a system: its findings with their fixes, its figures and what its page says; in full also what pictures and form are made of. */
export function inLines(library: Library, path: string, isFull: boolean): string[] {
  const checked = checkFile(library, path, { today, years: 1 })!
  const found = checked.findings.flatMap(({ severity, rule, pointer, message, related, corrections }) => [
    `${severity} ${rule} at ${pointer}: ${message}`,
    ...related.map((one) => `  see also ${one.message}`),
    ...corrections.map(({ text, why, certainty }) => `  ${certainty === 'same' ? 'write' : 'perhaps'} ${text}: ${why}`),
  ])
  if (!checked.review) return found
  const { system, figures } = checked.review
  const report = reportOf(library, checked, '')
  const { findings: _, ...review } = JSON.parse(reviewJson(checked.review, report)) as Record<string, unknown>
  const { picture, findings: __, cautions: ___, margins: ____, ...page } = pageData(system, figures, checked)
  const { figures: _____, ...pictures } = picture
  return [...found, ...flat({ review, page, ...(isFull && { pictures, form: formData(system).arrays }) })]
}

/** The page of a system as the terminal prints it, without its cautions. */
export function printed(library: Library, path: string): string[] {
  const checked = checkFile(library, path, { today, years: 1 })!
  const text = reviewText(checked.review!, reportOf(library, checked, ''), { colour: false })
  return text.replace(/\nCautions\n[^]*/, '').split('\n')
}

/** `/arrays/0/voltage: 41.23`: a number to four digits, what is short in one line. */
function flat(value: unknown, at = ''): string[] {
  if (Array.isArray(value) && value.length === 0) return [`${at}: none`]
  if (Array.isArray(value) && value.length > 1 && value.every(isPlain)) return [`${at}: ${listed(value.map(short))}`]
  if (isShort(value)) return [`${at}: ${short(value)}`]
  if (Array.isArray(value))
    return value.filter((_, i) => value.length < 60 || i % 30 === 0).flatMap((one) => flat(one, at))
  return Object.entries(value as object).flatMap(([key, one]) => flat(one, `${at}/${key}`))
}

const isShort = (value: unknown) => typeof value !== 'object' || value === null || short(value).length < 160

const isPlain = (value: unknown) => typeof value === 'number' || Array.isArray(value)

const short = (value: unknown): string => JSON.stringify(value, rounded) ?? 'nothing'

const rounded = (_: string, value: unknown) =>
  typeof value === 'number' ? Number((Math.abs(value) < 1e-9 ? 0 : value).toPrecision(4)) : value

/** Of a long row every eighth, and how many there are. */
const listed = (all: readonly string[]) =>
  all.length > 24 ? `${all.filter((_, i) => i % 8 === 0).join(' ')} (of ${all.length})` : all.join(' ')
