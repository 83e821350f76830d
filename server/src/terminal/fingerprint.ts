import { createHash } from 'node:crypto'
import type { FileReport } from './file-report.ts'

/**
 * A name for each finding that stays while lines move and messages are reworded: a hash over the rule, the file's place in
 * its library, the field and what was typed there, white space aside. Findings alike in all four are counted.
 *
 * @returns  one for each finding, then one for each accepted one
 */
export function fingerprints(file: FileReport): readonly string[] {
  const { findings, accepted, place, text } = file
  if (file.fingerprints) return file.fingerprints
  const seen = new Map<string, number>()
  return [...findings, ...accepted.map(({ finding }) => finding)].map(({ rule, pointer, span }) => {
    // a whole file or group is known by its place alone, so that an edit inside it changes nothing
    const typed = span.end - span.start <= 200 ? text.slice(span.start, span.end).replace(/\s+/g, ' ').trim() : ''
    const name = JSON.stringify([rule, place, pointer, typed])
    const count = (seen.get(name) ?? 0) + 1
    seen.set(name, count)
    return createHash('sha256')
      .update(count === 1 ? name : `${name} ${count}`)
      .digest('hex')
      .slice(0, 16)
  })
}
