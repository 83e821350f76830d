/** `$0` is the cursor; it is taken out, everything else stays where it is. */
export const cursor = (fixture: string) => ({ source: fixture.replace('$0', ''), offset: fixture.indexOf('$0') })

/** A mark of a rule fixture: the line above it must carry this finding on exactly these characters. */
export interface Mark {
  readonly line: number
  readonly from: number
  readonly to: number
  /** The message, or how it begins. */
  readonly text: string
}

const markLine = /^(\s*#\s*)(\^+)\s?(.*)$/

/** `#  ^^^^ message` below a line marks what must be found there. Marks are taken out; the YAML stays as it is. */
export function marked(fixture: string): { readonly source: string; readonly marks: readonly Mark[] } {
  const source: string[] = []
  const marks: Mark[] = []
  for (const line of fixture.split('\n')) {
    const [, indent, carets, text] = markLine.exec(line) ?? []
    if (indent === undefined || carets === undefined) source.push(line)
    else
      marks.push({
        line: source.length - 1,
        from: indent.length,
        to: indent.length + carets.length,
        text: (text ?? '').trim(),
      })
  }
  return { source: source.join('\n'), marks }
}
