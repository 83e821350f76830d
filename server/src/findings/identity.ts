import type { Finding } from './finding.ts'

/**
 * A name for each finding of a file that stays while lines move and messages are reworded: the rule, the file's place in its
 * library, the field and what was typed there, white space aside. Findings alike in all four are counted.
 *
 * @param place  of the file, from the folder of its library
 * @param text   of the file
 */
export function identitiesOf(findings: readonly Finding[], place: string, text: string): readonly string[] {
  const seen = new Map<string, number>()
  return findings.map(({ rule, pointer, span }) => {
    // a whole file or group is known by its place alone, so that an edit inside it changes nothing
    const typed = span.end - span.start <= 200 ? text.slice(span.start, span.end).replace(/\s+/g, ' ').trim() : ''
    const name = JSON.stringify([rule, place, pointer, typed])
    const count = (seen.get(name) ?? 0) + 1
    seen.set(name, count)
    return count === 1 ? name : `${name} ${count}`
  })
}
