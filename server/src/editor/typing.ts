import type { Finding } from '../findings/finding.ts'
import type { ReadFile } from '../records/read-file.ts'
import { lineAround } from '../text/lines.ts'
import { nodeAtPointer } from '../text/tree-queries.ts'
import { unfinishedAt, waitsForLine } from './unfinished.ts'

/** How long the line that was edited last stays quiet [ms]. */
const patience = 2000

/**
 * Remembers where each open file was edited last, for the server sees no cursor: what is not whole there yet is no mistake.
 * Another line that is edited, a saved file or two seconds end that.
 *
 * @param ended  hears of a file whose held back findings are due
 */
export function createTyping(ended: (path: string) => void) {
  const texts = new Map<string, string>()
  const edited = new Map<string, { readonly end: number; readonly timer: ReturnType<typeof setTimeout> }>()
  const holding = new Set<string>()
  let last = -Infinity

  return {
    /** Whether a file was edited so many milliseconds ago, or fewer. */
    wasWithin: (time: number) => performance.now() - last < time,
    opened: (path: string, text: string) => void texts.set(path, text),
    changed(path: string, text: string) {
      const before = texts.get(path)
      texts.set(path, text)
      if (before === undefined || before === text) return
      last = performance.now()
      stop(path)
      holding.delete(path)
      edited.set(path, { end: editEnd(before, text), timer: setTimeout(() => rest(path), patience) })
    },
    /** The file was saved, or put away. */
    rest,
    closed(path: string) {
      texts.delete(path)
      holding.delete(path)
      stop(path)
    },
    /** What is found in a file, without what waits for the rest of a line. */
    finishedOf(file: ReadFile & { readonly findings: readonly Finding[] }, path: string): readonly Finding[] {
      const end = texts.get(path) === file.tree.text ? edited.get(path)?.end : undefined
      if (end === undefined) return file.findings
      const finished = file.findings.filter(isWholeAt(file, end))
      if (finished.length === file.findings.length) return file.findings
      holding.add(path)
      return finished
    },
  }

  function stop(path: string) {
    clearTimeout(edited.get(path)?.timer)
    edited.delete(path)
  }

  function rest(path: string) {
    stop(path)
    if (holding.delete(path)) ended(path)
  }
}

/** Whether a finding need not wait: it is about something that is whole. */
function isWholeAt(file: ReadFile, cursor: number): (one: Finding) => boolean {
  const { tree } = file
  const line = lineAround(tree.text, cursor)
  const below = tree.text.slice(line.end).search(/\S/)
  const next = below < 0 ? line : lineAround(tree.text, line.end + below)
  const open = unfinishedAt(file, cursor)
  return ({ rule, span, pointer, related }) => {
    // a record that has no field yet lacks them all, wherever its first line is typed
    if (tree.root === null && waitsForLine(rule)) return false
    const isHere = span.start <= line.end && line.start <= span.end
    const isOpen = (pointer: string) => open !== null && (pointer === open || open.startsWith(`${pointer}/`))
    // a bracket or a quote that is still open is reported where the next line begins
    if (rule === 'yaml-syntax' && span.start <= next.end && line.start <= span.end) return false
    if (isHere && (waitsForLine(rule) || isOpen(pointer))) return false
    if (isHere && nodeAtPointer(tree, pointer)?.kind !== 'scalar') return false
    return open === null || !related.some((place) => place.path === undefined && isWithinLine(place.span, line))
  }
}

const isWithinLine = (span: { start: number; end: number }, line: { start: number; end: number }) =>
  line.start <= span.start && span.end <= line.end

/** Where the characters end that differ from the text before. */
function editEnd(before: string, after: string): number {
  const shorter = Math.min(before.length, after.length)
  let same = 0
  while (same < shorter && before.charCodeAt(same) === after.charCodeAt(same)) same++
  let tail = 0
  while (
    tail < shorter - same &&
    before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail)
  )
    tail++
  return after.length - tail
}
