import type { Comment } from './tree.ts'

/** A line that holds something, without its indentation, its comment and the blanks before it. */
export interface Line {
  /** Blanks before it, counted from the start of the line. */
  indent: number
  /** Where it begins; moves behind the dash of a list item. */
  start: number
  readonly end: number
}

const newline = 10
const carriageReturn = 13
const space = 32
const hash = 35

/** What no plain record holds: tabs and other control characters, half characters, byte order marks. */
const unusual = /[^\n\r\x20-\x7e\u00a0-\ud7ff\ue000-\ufefe\uff00-\ufffd]|\r(?!\n)/

/**
 * The lines of a text and its comments; null where the text holds characters that the whole grammar is needed for. A `#`
 * inside of quotes counts as a comment here, so whoever reads the line finds its quote open.
 */
export function scanLines(text: string, comments: Comment[]): Line[] | null {
  if (unusual.test(text)) return null
  const lines: Line[] = []
  for (let at = 0; at < text.length;) {
    const found = text.indexOf('\n', at)
    const next = found < 0 ? text.length : found
    const start = afterSpaces(text, at)
    let end = next
    const comment = commentIn(text, start, next)
    if (comment !== null) {
      comments.push(commentOf(text, comment, next))
      end = comment
    }
    while (start < end && isBlank(text.charCodeAt(end - 1))) end--
    if (start < end) lines.push({ indent: start - at, start, end })
    at = next + 1
  }
  return lines
}

export function afterSpaces(text: string, from: number): number {
  let at = from
  while (text.charCodeAt(at) === space) at++
  return at
}

const isBlank = (code: number) => code === space || code === carriageReturn

/** Where the first `#` with a blank or nothing in front of it is. */
function commentIn(text: string, start: number, end: number): number | null {
  for (let at = start; at < end; at++)
    if (text.charCodeAt(at) === hash && (at === start || text.charCodeAt(at - 1) === space)) return at
  return null
}

function commentOf(text: string, start: number, lineEnd: number): Comment {
  const end =
    text.charCodeAt(lineEnd - 1) === carriageReturn && text.charCodeAt(lineEnd) === newline ? lineEnd - 1 : lineEnd
  const typed = text.slice(start, end)
  return { span: { start, end: start + typed.trimEnd().length }, text: typed.slice(1).trim() }
}

/** How many more brackets a text opens than it closes. */
export const stillOpen = (text: string): number =>
  (text.match(/[[{]/g)?.length ?? 0) - (text.match(/[\]}]/g)?.length ?? 0)
