import { checkFile } from '../../server/src/check/check.ts'
import type { Correction, Finding } from '../../server/src/findings/finding.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { readFile } from '../../server/src/records/read.ts'
import { applyEdits } from '../../server/src/text/span.ts'

const check = (path: string, text: string) => {
  const library = createLibrary()
  library.put(path, text)
  return checkFile(library, path, { today: '2026-11-25' })!
}
const noNumber = /\b(?:NaN|Infinity|undefined)\b/
const textBecomes = new Set(['hash-cuts-text', 'hash-cuts-braces'])

/** Reading alone, which makes most corrections and takes a tenth of the time. */
const read = (path: string, text: string) => {
  const file = readFile(path, text)!
  return { ...file, findings: file.readFindings }
}

/** What is broken of what every check of every text promises; nothing where all is kept. */
export function complaintsAbout(path: string, text: string, how: 'whole' | 'reading' = 'whole'): string[] {
  const see = how === 'whole' ? check : read
  const checked = see(path, text)
  const quoted = noNumber.test(text)
  return checked.findings.flatMap((finding) => {
    const { rule, message, span, pointer, corrections } = finding
    const said = [message, ...corrections.flatMap(({ why, text }) => [why, text])].join('\n')
    return [
      ...(rule === 'internal-error' ? [`${rule}: ${message}`] : []),
      ...(message.length <= 300 ? [] : [`${rule}: a message of ${message.length} characters`]),
      ...(quoted || !noNumber.test(said) ? [] : [`${rule}: ${said}`]),
      ...(0 <= span.start && span.start <= span.end && span.end <= text.length ? [] : [`${rule}: outside the text`]),
      ...corrections.flatMap((one) => broken(one).map((what) => `${rule} at ${pointer}: the correction ${what}`)),
    ]

    function broken({ edits }: Correction): string[] {
      const sorted = [...edits].sort((a, b) => a.span.start - b.span.start)
      if (sorted.some(({ span }, i) => span.end < span.start || span.start < (sorted[i - 1]?.span.end ?? 0)))
        return ['has edits that are inverted or overlap']
      const after = applyEdits(text, edits)
      if (after === text) return ['changes nothing']
      const again = see(path, after)
      const same = (among: readonly Finding[]) =>
        among.filter((one) => one.rule === rule && one.pointer === pointer).length
      return [
        ...(again.tree.problems.length > checked.tree.problems.length ? ['adds a syntax error'] : []),
        ...(!textBecomes.has(rule) && again.tree.comments.length < checked.tree.comments.length
          ? ['drops a comment']
          : []),
        ...(same(again.findings) >= same(checked.findings) ? ['leaves its own finding'] : []),
      ]
    }
  })
}
