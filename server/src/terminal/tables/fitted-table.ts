import { table } from './table.ts'

/**
 * A table that is no wider than the terminal: the last column is folded first, and where that is not enough the columns are
 * laid out as several tables, each beginning with the first column.
 *
 * @param rows  the first is the head
 * @param width  in characters
 */
export function fittedTable(rows: readonly (readonly string[])[], width: number): string {
  const count = rows[0]?.length ?? 0
  const parts: number[][] = []
  let part: number[] = []
  for (let column = 1; column < count; column++) {
    const next = [...part, column]
    if (part.length > 0 && width < widthOf(rows, [0, ...next], column === count - 1)) {
      parts.push(part)
      part = [column]
    } else part = next
  }
  parts.push(part)
  return parts.map((columns) => folded(rows, [0, ...columns], width)).join('\n')
}

/** Narrower than this a column of words is hard to read. */
const narrowest = 24

function widthOf(rows: readonly (readonly string[])[], columns: readonly number[], foldsLast: boolean): number {
  const widths = columns.map((column, i) => {
    const natural = widest(rows, column)
    return foldsLast && i === columns.length - 1 ? Math.min(narrowest, natural) : natural
  })
  return widths.reduce((all, one) => all + one + 2, -2)
}

const widest = (rows: readonly (readonly string[])[], column: number) =>
  Math.max(0, ...rows.map((row) => [...(row[column] ?? '')].length))

function folded(rows: readonly (readonly string[])[], columns: readonly number[], width: number): string {
  const last = columns.at(-1)!
  const before = columns.slice(0, -1).reduce((all, column) => all + widest(rows, column) + 2, 0)
  const room = Math.max(narrowest, width - before)
  const lines = rows.flatMap((row) => {
    const [first = '', ...more] = foldWords(row[last] ?? '', room)
    const head = columns.map((column) => (column === last ? first : (row[column] ?? '')))
    return [head, ...more.map((line) => columns.map((column) => (column === last ? line : '')))]
  })
  return table(lines)
}

/** Lines of no more than so many characters, where words are no longer. */
export function foldWords(text: string, room: number): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && [...`${line} ${word}`].length > room) {
      lines.push(line)
      line = word
    } else line = line === '' ? word : `${line} ${word}`
  }
  return [...lines, line]
}
