/** A place as the language server protocol counts: lines and UTF-16 characters from 0. */
export interface Position {
  readonly line: number
  readonly character: number
}

/** The offset at which each line starts; a line ends with `\n`, `\r\n` or a lone `\r`. */
export function lineStarts(text: string): number[] {
  const starts = [0]
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at)
    if (unit === 10 || (unit === 13 && text.charCodeAt(at + 1) !== 10)) starts.push(at + 1)
  }
  return starts
}

export function positionAt(starts: readonly number[], offset: number): Position {
  let low = 0
  let high = starts.length
  while (1 < high - low) {
    const middle = (low + high) >> 1
    if (starts[middle]! <= offset) low = middle
    else high = middle
  }
  return { line: low, character: offset - starts[low]! }
}

/** A line beyond the last gives the end of the text, a character beyond its line the line's end: clients do send such. */
export function offsetAt(starts: readonly number[], position: Position, text: string): number {
  const start = starts[position.line]
  if (start === undefined) return text.length
  return Math.min(start + position.character, lineAround(text, start).end)
}

/** The offsets at which the line around `offset` starts and ends, its line ending left out. */
export function lineAround(text: string, offset: number): { start: number; end: number } {
  let start = offset
  while (0 < start && !isBreak(text, start - 1)) start--
  let end = offset
  while (end < text.length && !isBreak(text, end)) end++
  return { start, end }
}

function isBreak(text: string, at: number): boolean {
  return text[at] === '\n' || text[at] === '\r'
}
