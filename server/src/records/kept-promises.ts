import type { Correction, Finding } from '../findings/finding.ts'
import type { Edit } from '../text/span.ts'
import { applyEdits } from '../text/span.ts'
import type { Tree } from '../text/tree.ts'

/** Characters that are read again, at most, to try corrections: a record of 2 KB may have hundreds of them. */
const mostTried = 1024 * 1024

/** What a text is like after a correction. */
type Reread = (text: string) => { readonly tree: Tree; readonly findings: readonly Finding[] }

/**
 * Findings without the corrections that do not keep their promise: one that changes nothing or cannot be applied, that
 * leaves its own finding, makes a syntax error or drops a comment.
 */
export function withKeptPromises(tree: Tree, findings: readonly Finding[], reread: Reread): readonly Finding[] {
  const perRule = (among: readonly Finding[], { rule, pointer }: Finding) =>
    among.filter((one) => one.rule === rule && one.pointer === pointer).length
  let left = mostTried
  return findings.map((one) => {
    if (one.corrections.length === 0) return one
    const kept = one.corrections.filter((correction) => {
      left -= tree.text.length
      const after = left < 0 ? null : applied(tree.text, correction)
      if (after === null || after === tree.text) return false
      const again = reread(after)
      return (
        perRule(again.findings, one) < perRule(findings, one) &&
        again.tree.problems.length <= tree.problems.length &&
        (takesComment.has(one.rule) || again.tree.comments.length >= tree.comments.length)
      )
    })
    return kept.length === one.corrections.length ? one : { ...one, corrections: kept }
  })
}

/** What these find is that a text was taken for a comment. */
const takesComment: ReadonlySet<string> = new Set(['hash-cuts-text', 'hash-cuts-braces'])

/** null where the edits do not fit the text or each other. */
function applied(text: string, { edits }: Correction): string | null {
  const sorted = [...edits].sort((a, b) => a.span.start - b.span.start)
  const fits = ({ span: { start, end } }: Edit, i: number) =>
    (sorted[i - 1]?.span.end ?? 0) <= start && start <= end && end <= text.length
  return sorted.every(fits) ? applyEdits(text, edits) : null
}
