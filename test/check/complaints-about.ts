import { checkFile } from '../../server/src/check/check.ts'
import { toFinding } from '../../server/src/check/in-words.ts'
import { withKeptPromises } from '../../server/src/check/kept-promises.ts'
import { readingFound } from '../../server/src/check/reading.ts'
import type { Correction, Finding } from '../../server/src/findings/finding.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { readFile } from '../../server/src/records/read.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import type { Tree } from '../../server/src/text/tree.ts'

/** A text as it is seen: its findings with the corrections that are offered, and how a corrected text is seen. */
interface Seen {
  readonly tree: Tree
  readonly findings: readonly Finding[]
  readonly after: (text: string) => { readonly tree: Tree; readonly findings: readonly Finding[] }
}

function checked(path: string, text: string): Seen {
  const library = createLibrary()
  library.put(path, text)
  const after = (corrected: string) => checked(path, corrected)
  return { ...checkFile(library, path, { today: '2026-11-25' })!, after }
}

/** Reading alone, which makes most corrections and takes a tenth of the time; each text is read once. */
function read(path: string, text: string): Seen {
  const known = new Map<string, ReadFile>()
  const once = (one: string) => {
    const file = known.get(one) ?? readFile(path, one)!
    known.set(one, file)
    return file
  }
  const file = once(text)
  const kept = withKeptPromises(file, readingFound(file.readFindings()), (one) => ({
    file: once(one),
    mayRemain: () => true,
    findings: () => [],
    found: () => [],
  }))
  const after = (corrected: string) => ({ tree: once(corrected).tree, findings: once(corrected).readFindings() })
  return { tree: file.tree, findings: kept.map((found) => toFinding(found, file.kind)), after }
}

const noNumber = /\b(?:NaN|Infinity|undefined)\b/
const textBecomes = new Set(['hash-cuts-text', 'hash-cuts-braces'])

/** What is broken of what every check of every text promises; nothing where all is kept. */
export function complaintsAbout(path: string, text: string, how: 'whole' | 'reading' = 'whole'): string[] {
  const seen = how === 'whole' ? checked(path, text) : read(path, text)
  const quoted = /NaN|Infinity|undefined/.test(text)
  return seen.findings.flatMap((finding) => {
    const { rule, message, span, pointer, corrections, related } = finding
    const said = [message, ...related.map((one) => one.message), ...corrections.map(({ why }) => why)]
    const shown = [...said, ...corrections.map((one) => one.text)].join('\n')
    return [
      ...(rule === 'internal-error' ? [`${rule}: ${message}`] : []),
      ...said.filter(({ length }) => length > 300).map(({ length }) => `${rule}: a message of ${length} characters`),
      ...(quoted || !noNumber.test(shown) ? [] : [`${rule}: ${shown}`]),
      ...(0 <= span.start && span.start <= span.end && span.end <= text.length ? [] : [`${rule}: outside the text`]),
      ...corrections.flatMap((one) => broken(one).map((what) => `${rule} at ${pointer}: the correction ${what}`)),
    ]

    function broken({ edits }: Correction): string[] {
      const sorted = [...edits].sort((a, b) => a.span.start - b.span.start)
      if (sorted.some(({ span }, i) => span.end < span.start || span.start < (sorted[i - 1]?.span.end ?? 0)))
        return ['has edits that are inverted or overlap']
      const corrected = applyEdits(text, edits)
      if (corrected === text) return ['changes nothing']
      const again = seen.after(corrected)
      const lost = (of: string, { comments }: Tree) => {
        const left = new Set(comments.map((comment) => comment.text))
        return of === 'field-twice'
          ? seen.tree.comments.filter((comment) => !left.has(comment.text)).length
          : seen.tree.comments.length - comments.length
      }
      const same = (among: readonly Finding[]) =>
        among.filter((one) => one.rule === rule && one.pointer === pointer).length
      return [
        ...(again.tree.problems.length > seen.tree.problems.length ? ['adds a syntax error'] : []),
        ...(!textBecomes.has(rule) && lost(rule, again.tree) > 0 ? ['drops a comment'] : []),
        ...(same(again.findings) >= same(seen.findings) ? ['leaves its own finding'] : []),
      ]
    }
  })
}
