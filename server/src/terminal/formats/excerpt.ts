import { lineAround } from '../../text/lines.ts'
import type { Span } from '../../text/span.ts'
import { visible } from '../visible.ts'

/** Longest piece of a line that is shown, and how much of it stands before the marked characters. */
const window = { length: 200, before: 80 }

/**
 * The line that a stretch of text starts in, and a marker line that puts `^` under its characters on a terminal: tabs
 * stay tabs, wide characters get two marks, combining ones none. What runs on to further lines is marked to the end of
 * the first; of a very long line only the surroundings are shown.
 *
 * @returns  column: by character (code point) of the whole line, from 1
 */
export function excerpt(
  text: string,
  starts: readonly number[],
  line: number,
  span: Span,
): { line: string; marker: string; column: number } {
  const start = starts[line] as number
  const whole = text.slice(start, lineAround(text, start).end)
  const from = Math.max(0, Math.min(span.start - start - window.before, whole.length - window.length))
  const until = Math.min(whole.length, from + window.length)
  const [left, right] = [from === 0 ? '' : '…', until === whole.length ? '' : '…']
  const before = left + visible(whole.slice(from, span.start - start))
  const marked = visible(whole.slice(span.start - start, Math.min(span.end - start, until)))
  return {
    line: left + visible(whole.slice(from, until)) + right,
    marker: before.replace(/[^\t]/gu, (c) => ' '.repeat(width(c))) + '^'.repeat(Math.max(1, columns(marked))),
    column: [...whole.slice(0, span.start - start)].length + 1,
  }
}

const columns = (text: string) => [...text].reduce((sum, c) => sum + width(c), 0)

/** How many columns of a terminal a character takes, by the classes of Unicode Standard Annex 11 that are always wide. */
function width(c: string): number {
  if (/^[\p{Mn}\p{Me}\p{Cf}]$/u.test(c)) return 0
  return /^[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF01-\uFF60\uFFE0-\uFFE6\u{1F300}-\u{1F64F}\u{1F680}-\u{1F6FF}\u{1F900}-\u{1F9FF}\u{20000}-\u{3FFFD}]$/u.test(
    c,
  )
    ? 2
    : 1
}
