import type { Finding } from '../findings/finding.ts'
import { applyEdits, type Edit } from '../text/span.ts'

/** A space that a PDF leaves in a number hides its decimal comma: a fix may bring another to light. Nothing needs more rounds than this. */
const rounds = 10

/**
 * A text with every fix that keeps its meaning; what changes a number waits for a person.
 *
 * @param findings  in the text as it is
 * @param again     what is found in the text after a round
 * @returns         the text, and how many fixes it took
 */
export function withSafeFixes(
  before: string,
  findings: readonly Finding[],
  again: (text: string) => readonly Finding[],
): { readonly text: string; readonly count: number } {
  let [text, count, left] = [before, 0, findings]
  for (let round = 0; round < rounds; round++) {
    const edits = safeEdits(left)
    if (edits.length === 0) break
    count += edits.length
    text = applyEdits(text, edits.flat())
    left = again(text)
  }
  return { text, count }
}

/** Of fixes that touch the same characters the first; the others wait for the next round. */
function safeEdits(findings: readonly Finding[]): readonly (readonly Edit[])[] {
  const taken: Edit[] = []
  return findings.flatMap(({ corrections: [best] }) => {
    if (best?.certainty !== 'same' || best.edits.length === 0) return []
    if (best.edits.some((edit) => taken.some((other) => overlap(edit, other)))) return []
    taken.push(...best.edits)
    return [best.edits]
  })
}

const overlap = ({ span: a }: Edit, { span: b }: Edit) => a.start <= b.end && b.start <= a.end
