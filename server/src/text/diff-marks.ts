import { phrase } from '../wording/phrase.ts'
import type { Line } from './line.ts'
import type { Margin } from './margin.ts'
import type { Edit } from './span.ts'

const hunk = /^@@ -\d+(?:,\d+)? \+\d+(?:,\d+)? @@/
const header =
  /^(?:diff --git |index [\da-f]+\.\.|(?:---|\+\+\+) \S|@@ -\d|(?:new|deleted) file mode |(?:old|new) mode |similarity index |rename (?:from|to) |\\ No newline)/

/** Lines as `git diff` prints them: all of them, or some that were pasted among others. */
export function diffMarks(lines: readonly Line[]): Margin | null {
  const isHeader = lines.map(({ text }) => header.test(text))
  const added = lines.filter((line, i) => !isHeader[i] && line.text.startsWith('+'))
  if (added.length === 0 && !lines.some((line) => hunk.test(line.text))) return null
  const whole = (i: number): Edit => {
    const { start, text: line } = lines[i]!
    return { span: { start, end: lines[i + 1]?.start ?? start + line.length }, text: '' }
  }
  const sign = ({ start }: Line): Edit => ({ span: { start, end: start + 1 }, text: '' })
  const way = (isContext: (line: Line) => boolean, isDeleted: (i: number) => boolean): readonly Edit[] =>
    lines.flatMap((line, i) => {
      if (isHeader[i] || isDeleted(i)) return [whole(i)]
      return line.text.startsWith('+') || isContext(line) ? [sign(line)] : []
    })
  const isMinus = (i: number) => !isHeader[i] && lines[i]!.text.startsWith('-')
  const isReplaced = (i: number) => isMinus(i) && isBesidePlus(lines, isHeader, i)
  const begins = ({ text: line }: Line) => line === '' || /^[-+ \\]/.test(line)
  const isWhole = lines.every((line, i) => isHeader[i] || begins(line))
  const isBlank = ({ text: line }: Line) => line.startsWith(' ')
  const isOdd = ({ indent }: Line) => indent % 2 === 1
  const never = () => false
  const deletes = isWhole ? lines.some((_, i) => isMinus(i)) : lines.some((_, i) => isReplaced(i))
  const sentence = deletes
    ? phrase`The marks of a diff (+, -, @@) are not part of a record: take them out, and delete the lines that begin with -.`
    : phrase`The marks of a diff (+, @@) are not part of a record: take them out.`
  const ways = [
    ...(isWhole ? [way(isBlank, isMinus)] : []),
    way(never, never),
    way(never, isReplaced),
    ...(lines.some(isOdd) ? [way(isOdd, isReplaced)] : []),
  ]
  return { sentence, ways: ways.filter((edits) => edits.length > 0) }
}

/** Whether only other lines with a minus are between a line with a minus and one with a plus. */
function isBesidePlus(lines: readonly Line[], isHeader: readonly boolean[], at: number): boolean {
  return [1, -1].some((step) => {
    let i = at + step
    while (!isHeader[i] && lines[i]?.text.startsWith('-')) i += step
    return !isHeader[i] && (lines[i]?.text.startsWith('+') ?? false)
  })
}
