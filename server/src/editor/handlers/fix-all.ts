import { withSafeFixes } from '../../check/safe-fixes.ts'
import { readFile } from '../../records/read.ts'
import type { Edit } from '../../text/span.ts'
import type { Here } from '../here.ts'

/** All that keeps its meaning, fixed in one step. */
export interface FixAll {
  /** How many fixes it is made of. */
  readonly count: number
  readonly edits: readonly Edit[]
}

export function everySafeFix({ checked, path }: Here): FixAll {
  const before = checked.tree.text
  const { text, count } = withSafeFixes(before, checked.findings, (now) => readFile(path, now)?.readFindings() ?? [])
  return { count, edits: changed(before, text) }
}

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
