import type { Finding } from '../../findings/finding.ts'
import { readFile } from '../../records/read.ts'
import { applyEdits, type Edit, type Span } from '../../text/span.ts'
import type { Here } from '../here.ts'
import { isWithin } from '../spot.ts'

/** All that keeps its meaning, fixed in one step. */
export interface FixAll {
  /** How many fixes it is made of. */
  readonly count: number
  readonly edits: readonly Edit[]
}

/** A space that a PDF leaves in a number hides its decimal comma, so what a fix brings to light is fixed as well, in so many rounds. */
const rounds = 4

export function everySafeFix({ checked, path }: Here): FixAll {
  const before = checked.tree.text
  let [text, count] = [before, 0]
  let findings: readonly Finding[] = checked.findings
  for (let round = 0; round < rounds; round++) {
    const edits = safeFixes(findings)
    if (edits.length === 0) break
    count += edits.length
    text = applyEdits(text, edits.flat())
    findings = readFile(path, text)?.readFindings ?? []
  }
  return { count, edits: changed(before, text) }
}

/** Only what keeps the meaning; two fixes of the same characters wait for the next round. */
function safeFixes(findings: readonly Finding[]): readonly (readonly Edit[])[] {
  const safe: (readonly Edit[])[] = []
  for (const { corrections } of findings) {
    const edits = corrections.find(({ certainty }) => certainty === 'same')?.edits
    if (edits?.every((one) => safe.flat().every((other) => isApart(one.span, other.span)))) safe.push(edits)
  }
  return safe
}

const isApart = (a: Span, b: Span) => !isWithin(a, b.start) && !isWithin(a, b.end) && !isWithin(b, a.start)

/** Edits that make one text of another: in each line the characters that differ, where the lines are as many, else one stretch. */
function changed(before: string, after: string): readonly Edit[] {
  const [old, now] = [before.split('\n'), after.split('\n')]
  if (old.length !== now.length) return stretch(before, after, 0)
  let start = 0
  return old.flatMap((line, i) => {
    const edits = stretch(line, now[i]!, start)
    start += line.length + 1
    return edits
  })
}

function stretch(before: string, after: string, offset: number): readonly Edit[] {
  if (before === after) return []
  const most = Math.min(before.length, after.length)
  let [head, tail] = [0, 0]
  while (head < most && before[head] === after[head]) head++
  while (tail < most - head && before.at(-1 - tail) === after.at(-1 - tail)) tail++
  const span = { start: offset + head, end: offset + before.length - tail }
  return [{ span, text: after.slice(head, after.length - tail) }]
}
