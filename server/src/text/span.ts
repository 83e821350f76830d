/** A stretch of a file: UTF-16 offsets, `end` not included. */
export interface Span {
  readonly start: number
  readonly end: number
}

/** The characters of `span` are replaced by `text`; everything else stays as it is. */
export interface Edit {
  readonly span: Span
  readonly text: string
}

/** Applies edits that do not overlap. Throws when they do, for that is our own mistake. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let out = ''
  let at = 0
  for (const { span, text: piece } of [...edits].sort((a, b) => a.span.start - b.span.start)) {
    if (span.start < at) throw new Error(`overlapping edits at ${span.start}`)
    out += text.slice(at, span.start) + piece
    at = span.end
  }
  return out + text.slice(at)
}
